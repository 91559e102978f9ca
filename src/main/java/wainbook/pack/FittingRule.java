package wainbook.pack;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/**
 * Whether a pack may be fitted. A serial that is no pack of this works is none of its business, unless the part is one that
 * the works keeps.
 *
 * @param kept whether the part is one that the works keeps as a pack
 * @param lotHeldBy serial of another pack that holds the lot
 * @param fitted whether the record has it in the vehicle already: then no check in storage is owed, nor is one that was
 *     read before the works kept the part stopped
 */
public record FittingRule(
        String serial, boolean kept, Optional<Pack> pack, Optional<String> lotHeldBy, boolean fitted) {

    /** Every reason against it, each with where it is lifted. */
    public List<Reason> against(LocalDate today, ZoneId zone) {
        if (pack.isEmpty()) {
            return kept && !fitted
                    ? List.of(Reason.of("pack.notReceived", Reason.WORKS_RULE, serial)
                            .liftedAt("/packs/new?serial=" + serial))
                    : List.of();
        }
        var against = new ArrayList<Reason>();
        Pack known = pack.get();
        if (known.gone()) {
            against.add(reason("pack.sentAway"));
        }
        if (known.quarantined()) {
            against.add(reason("pack.inQuarantine"));
        } else if (known.setAside()) {
            against.add(reason("pack.defective"));
        } else if (!known.accepted()) {
            against.add(reason("pack.notAccepted"));
        }
        lotHeldBy.ifPresent(other -> against.add(
                Reason.of("pack.lotHeld", Reason.PRACTICE, serial, known.lot().orElse("–"), other)
                        .liftedAt("/packs/" + other)));
        known.checkDue(zone)
                .filter(due -> !fitted && today.isAfter(due))
                .ifPresent(due -> against.add(Reason.of("pack.checkOverdue", Reason.PRACTICE, serial, due)
                        .liftedAt("/packs/" + serial + "/check")));
        return List.copyOf(against);
    }

    private Reason reason(String key) {
        return Reason.of(key, Reason.WORKS_RULE, serial).liftedAt("/packs/" + serial);
    }
}

package wainbook.waste.act;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.act.Collecting.ToCollect;
import wainbook.waste.note.NoteCode;

/** What stands against a container's leaving under a note. Registration and permit are looked up on the day, each time. */
final class CollectRule {

    private static final String DUTY_OF_CARE =
            "Environmental Protection Act 1990 s.34; looking up on the day is a works rule";
    private static final String CONSIGNMENT = "SI 2005/894, England";
    private static final String TRANSFER = "SI 2011/988 reg 35";
    private static final int LONGEST_CODE = 40;

    private CollectRule() {}

    /** What stands against any note for it. */
    static List<Reason> standing(Optional<Container> known, String label) {
        if (known.isEmpty()) {
            return List.of(
                    Reason.of("waste.noContainer", Reason.WORKS_RULE, label).liftedAt("/waste"));
        }
        Container container = known.get();
        if (container.collectedBy().isPresent()) {
            return List.of(Reason.of("waste.gone", Reason.WORKS_RULE, label).liftedAt(Labels.path(label)));
        }
        return container.massKg().signum() == 0
                ? List.of(Reason.of("waste.empty", Reason.WORKS_RULE, label).liftedAt(Labels.path(label)))
                : List.of();
    }

    static List<Reason> against(Container container, ToCollect asked, LocalDate today) {
        var against = new ArrayList<Reason>();
        boolean hazardous = container.row().hazardous();
        String source = hazardous ? CONSIGNMENT : TRANSFER;
        if (hazardous && !NoteCode.fits(asked.code())) {
            against.add(Reason.of("waste.noteCodeForm", source).liftedAt("#code"));
        } else if (asked.code().isBlank() || asked.code().length() > LONGEST_CODE) {
            against.add(Reason.of("waste.noteCodeMissing", source, LONGEST_CODE).liftedAt("#code"));
        }
        demand(asked.producer(), "producer", source).ifPresent(against::add);
        demand(asked.sic(), "sic", source).ifPresent(against::add);
        demand(asked.process(), "process", source).ifPresent(against::add);
        demand(asked.packing(), "packing", source).ifPresent(against::add);
        demand(asked.carrier(), "carrier", source).ifPresent(against::add);
        demand(asked.registration(), "registration", DUTY_OF_CARE).ifPresent(against::add);
        demand(asked.vehicle(), "vehicle", source).ifPresent(against::add);
        demand(asked.site(), "site", source).ifPresent(against::add);
        demand(asked.permit(), "permit", DUTY_OF_CARE).ifPresent(against::add);
        if (hazardous) {
            demand(asked.components(), "components", source).ifPresent(against::add);
            demand(asked.hazards(), "hazards", source).ifPresent(against::add);
        }
        Typed.length(asked.transport(), "transport").ifPresent(against::add);
        seen(asked.registrationSeenOn(), "registrationSeenOn", today).ifPresent(against::add);
        seen(asked.permitSeenOn(), "permitSeenOn", today).ifPresent(against::add);
        asked.weighbridgeKg().flatMap(kg -> Typed.mass(kg, "weighbridgeKg")).ifPresent(against::add);
        if (asked.weighbridgeKg().isPresent() != asked.weighbridge().isPresent()) {
            against.add(Reason.of("waste.weighbridgeHalf", Reason.WORKS_RULE)
                    .liftedAt(asked.weighbridge().isPresent() ? "#weighbridgeKg" : "#weighbridge"));
        }
        return against;
    }

    private static Optional<Reason> demand(String text, String field, String source) {
        return text.isBlank() || text.length() > Typed.LONGEST
                ? Optional.of(Reason.of("waste.missing", source, Typed.LONGEST).liftedAt("#" + field))
                : Optional.empty();
    }

    private static Optional<Reason> seen(LocalDate day, String field, LocalDate today) {
        return day.equals(today)
                ? Optional.empty()
                : Optional.of(Reason.of("waste.seenNotToday", DUTY_OF_CARE, day, today)
                        .liftedAt("#" + field));
    }
}

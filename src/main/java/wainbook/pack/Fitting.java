package wainbook.pack;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.works.shift.WorksDay;

/** Asked before a pack is fitted: what stands against it now. */
@ApplicationScoped
public class Fitting {

    private final Ledger ledger;
    private final WorksDay day;
    private final KnownPacks known;

    Fitting(Ledger ledger, WorksDay day, KnownPacks known) {
        this.ledger = ledger;
        this.day = day;
        this.known = known;
    }

    /** @param fitted whether the record has it in the vehicle already */
    public List<Reason> against(String part, String serial, boolean fitted, Instant now) {
        Optional<Pack> pack = Optional.of(serial)
                .filter(Serials::fits)
                .filter(known::mayBe)
                .flatMap(text -> Pack.of(ledger.history(Serials.subject(text))));
        Optional<String> heldBy = pack.flatMap(Pack::lot).flatMap(lot -> PackRow.holding(lot, serial));
        return new FittingRule(serial, known.keeps(part), pack, heldBy, fitted).against(day.of(now), day.zone());
    }
}

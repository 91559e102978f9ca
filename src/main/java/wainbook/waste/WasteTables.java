package wainbook.waste;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.LeftAsPart;

/** Containers, and parts that are due to somebody, as lists find them. */
@ApplicationScoped
class WasteTables implements Projection {

    private final Ledger ledger;

    WasteTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (!(entry.saying() instanceof WasteSaying)) {
            return;
        }
        if (entry.subject().sort() == Subject.Sort.CONTAINER) {
            Container.of(ledger.history(entry.subject())).ifPresent(WasteTables::row);
        } else if (entry.saying() instanceof Decided said) {
            decided(entry, said);
        } else if (entry.saying() instanceof LeftAsPart said) {
            DuePart.deleteById(DuePart.id(entry.subject().code(), said.thing()));
        }
    }

    private static void decided(Entry entry, Decided said) {
        String order = entry.subject().code();
        String id = DuePart.id(order, said.thing());
        if (said.dueOn().isEmpty() || !said.fate().leaves()) {
            DuePart.deleteById(id);
            return;
        }
        DuePart row = DuePart.<DuePart>findByIdOptional(id).orElseGet(DuePart::new);
        row.id = id;
        row.workOrder = order;
        row.thing = said.thing();
        row.fate = said.fate();
        row.party = said.party().orElse(null);
        row.dueOn = said.dueOn().get();
        row.since = entry.moment().at();
        row.persist();
    }

    private static void row(Container container) {
        ContainerRow row =
                ContainerRow.<ContainerRow>findByIdOptional(container.label()).orElseGet(ContainerRow::new);
        row.label = container.label();
        row.code = container.row().code();
        row.hazardous = container.row().hazardous();
        row.place = container.opened().place();
        row.capacity = container.opened().capacity();
        row.measure = container.opened().measure();
        row.filled = container.filled();
        row.massKg = container.massKg();
        row.vehicles = container.orders().size();
        row.since = container.since();
        row.askAfterDays = container.opened().askAfterDays();
        row.isSealed = container.sealedBy().isPresent();
        row.collectedAt =
                container.collectedBy().map(entry -> entry.moment().at()).orElse(null);
        row.noteCode = container.collected().map(said -> said.note().code()).orElse(null);
        row.noteKg = container.collected().map(said -> said.note().massKg()).orElse(null);
        row.isReturned = container.returnedBy().isPresent();
        row.persist();
    }

    @Override
    public void forget() {
        ContainerRow.deleteAll();
        DuePart.deleteAll();
    }

    @Override
    public Optional<Reason> clash(String constraint) {
        return constraint.contains("waste_note_once")
                ? Optional.of(
                        Reason.of("waste.noteCodeTaken", Reason.WORKS_RULE).liftedAt("#code"))
                : Optional.empty();
    }
}

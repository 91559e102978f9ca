package wainbook.permit;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.order.OrderSaying.Moved;
import wainbook.permit.PermitSaying.OnPaper;
import wainbook.permit.paper.PaperPermitRow;

/** Permits as lists read them, made from the whole of the stream they lie in. */
@ApplicationScoped
class PermitTables implements Projection {

    private final Ledger ledger;

    PermitTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof OnPaper paper) {
            PaperPermitRow.of(entry, paper);
        } else if (entry.saying() instanceof PermitSaying || entry.saying() instanceof Moved) {
            Permits.of(ledger.history(entry.subject())).all().forEach(PermitTables::row);
        }
    }

    private static void row(Permit permit) {
        String vehicle = Where.word(permit.subject());
        String id = vehicle + "/" + permit.number();
        PermitRow row = PermitRow.<PermitRow>findByIdOptional(id).orElseGet(PermitRow::new);
        row.id = id;
        row.vehicle = vehicle;
        row.number = permit.number();
        row.sort = permit.said().sort();
        row.issuedAt = permit.issued().moment().at();
        row.stillOpen = permit.open();
        row.persist();
    }

    @Override
    public void forget() {
        PermitRow.deleteAll();
        PaperPermitRow.deleteAll();
    }
}

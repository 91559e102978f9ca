package wainbook.handover.record;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.handover.record.RecordSaying.PartWithdrawn;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;

/** Which vehicles the list of open matters asks for snags. */
@ApplicationScoped
class SnagTables implements Projection {

    private final Ledger ledger;

    SnagTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (!(entry.saying() instanceof SnagAgreed
                || entry.saying() instanceof SnagClosed
                || entry.saying() instanceof PartWithdrawn)) {
            return;
        }
        String order = entry.subject().code();
        int open =
                HandoverRecord.of(ledger.history(entry.subject())).openSnags().size();
        if (open == 0) {
            SnagRow.deleteById(order);
            return;
        }
        SnagRow row = SnagRow.<SnagRow>findByIdOptional(order).orElseGet(SnagRow::new);
        row.workOrder = order;
        row.snags = open;
        row.persist();
    }

    @Override
    public void forget() {
        SnagRow.deleteAll();
    }
}

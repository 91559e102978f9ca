package wainbook.matter;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.matter.nonconformity.OpenNonconformity;

/** Open matters as lists read them. */
@ApplicationScoped
class MatterTables implements Projection {

    @Override
    public void take(Entry entry) {
        String order = entry.subject().code();
        if (entry.saying() instanceof NonconformityOpened opened) {
            var row = new OpenNonconformity();
            row.id = OpenNonconformity.id(order, opened.nonconformity());
            row.workOrder = order;
            row.number = opened.nonconformity();
            row.stage = opened.stage();
            row.item = opened.item().orElse(null);
            row.cause = opened.cause();
            row.what = opened.what();
            row.openedBy = entry.moment().who();
            row.since = entry.moment().at();
            row.persist();
        } else if (entry.saying() instanceof Disposed disposed) {
            OpenNonconformity.deleteById(OpenNonconformity.id(order, disposed.nonconformity()));
        }
    }

    @Override
    public void forget() {
        OpenNonconformity.deleteAll();
    }
}

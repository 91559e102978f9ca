package wainbook.safety.stop;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.permit.Where;
import wainbook.safety.SafetySaying.StopLifted;
import wainbook.safety.SafetySaying.WorkStopped;

/** Safety stops as lists read them. */
@ApplicationScoped
class StopTables implements Projection {

    private final Ledger ledger;

    StopTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof WorkStopped
                || entry.saying() instanceof StopLifted
                || entry.saying() instanceof HoldReleased) {
            Stops.of(ledger.history(entry.subject())).all().forEach(StopTables::row);
        }
    }

    private static void row(Stop stop) {
        String vehicle = Where.word(stop.stopped().subject());
        String id = vehicle + "/" + stop.number();
        StopRow row = StopRow.<StopRow>findByIdOptional(id).orElseGet(StopRow::new);
        row.id = id;
        row.vehicle = vehicle;
        row.number = stop.number();
        row.entry = stop.stopped().id();
        row.station = stop.said().station().orElse(null);
        row.since = stop.stopped().moment().at();
        row.stillOpen = stop.open();
        row.persist();
    }

    @Override
    public void forget() {
        StopRow.deleteAll();
    }
}

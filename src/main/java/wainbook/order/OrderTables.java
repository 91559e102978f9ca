package wainbook.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder.Phase;

/**
 * Work orders as lists read them. Which order holds a vehicle is judged by the whole stream: when all tables are made again, a
 * vehicle's former order must not meet the newest, whichever stream is read first.
 */
@ApplicationScoped
class OrderTables implements Projection {

    private final Ledger ledger;

    OrderTables(Ledger ledger) {
        this.ledger = ledger;
    }

    /** 1: with the order that a vehicle’s order carries on. */
    @Override
    public Optional<Version> version() {
        return Optional.of(new Version("work_order", 1));
    }

    @Override
    public void take(Entry entry) {
        if (!(entry.saying() instanceof OrderSaying saying)) {
            return;
        }
        if (saying instanceof OrderSaying.Ordered ordered) {
            var row = new WorkOrderRow();
            row.number = entry.subject().code();
            row.operator = ordered.operator();
            row.vehicleKind = ordered.vehicleKind();
            row.variant = ordered.variant();
            row.promisedOn = ordered.promisedOn();
            row.phase = Phase.ORDERED;
            row.since = entry.moment().at();
            row.persist();
        } else {
            change(WorkOrderRow.findById(entry.subject().code()), saying, entry);
        }
    }

    private void change(WorkOrderRow row, OrderSaying saying, Entry entry) {
        if (saying instanceof OrderSaying.DonorReceived received) {
            row.vin = received.vin();
            row.vehicleNow = cameBack(entry) ? null : received.vin();
            row.registration = received.registration();
            place(row, Phase.DONOR_RECEIVED, Optional.of(received.at()), entry);
        } else if (saying instanceof OrderSaying.DonorAccepted accepted) {
            place(row, Phase.DONOR_ACCEPTED, Optional.of(accepted.to()), entry);
        } else if (saying instanceof OrderSaying.DonorRejected) {
            place(row, Phase.DONOR_REJECTED, Optional.empty(), entry);
        } else if (saying instanceof OrderSaying.Moved moved) {
            place(row, moved.direction().leadsTo(), Optional.of(moved.to()), entry);
            onLine(row, entry);
            row.occupies = moved.direction().leadsTo() == Phase.ON_LINE
                    ? takesUp(moved.to().place(), entry)
                    : null;
        } else if (saying instanceof OrderSaying.HandedOver) {
            place(row, Phase.HANDED_OVER, Optional.empty(), entry);
        } else if (saying instanceof OrderSaying.Returned returned) {
            row.vin = returned.vin();
            row.earlier = returned.earlier();
            row.registration = returned.registration();
        } else if (saying instanceof OrderSaying.ReturnedUnder) {
            row.vehicleNow = null;
        } else if (saying instanceof OrderSaying.Held) {
            row.holds++;
        } else if (saying instanceof OrderSaying.HoldReleased) {
            row.holds--;
        }
    }

    private boolean cameBack(Entry entry) {
        return ledger.history(entry.subject())
                .saying(OrderSaying.ReturnedUnder.class)
                .findAny()
                .isPresent();
    }

    /**
     * A move that is told after another vehicle has come to the station takes up nothing there: it is over. So a past can
     * be played beside the present, which ends as if it had been told first.
     */
    private static String takesUp(String station, Entry entry) {
        boolean over = WorkOrderRow.occupant(station)
                .filter(other -> other.since.isAfter(entry.moment().at()))
                .isPresent();
        return over ? null : station;
    }

    private static void place(WorkOrderRow row, Phase phase, Optional<Place> at, Entry entry) {
        row.phase = phase;
        row.stage = at.flatMap(Place::stage).orElse(null);
        row.place = at.map(Place::place).orElse(null);
        row.occupies = null;
        row.since = entry.moment().at();
    }

    private static void onLine(WorkOrderRow row, Entry entry) {
        if (row.phase == Phase.ON_LINE && row.cameOnLine == null) {
            row.cameOnLine = entry.moment().at();
        }
        row.leftLine = row.phase == Phase.FINISHED ? entry.moment().at() : null;
    }

    @Override
    public void forget() {
        WorkOrderRow.deleteAll();
    }

    @Override
    public Optional<Reason> clash(String constraint) {
        if (constraint.contains("one_vehicle_a_station")) {
            return Optional.of(Reason.of("order.stationTaken", Reason.WORKS_RULE));
        }
        if (constraint.contains("one_order_a_vehicle")) {
            return Optional.of(Reason.of("order.vehicleHasOrder", Reason.WORKS_RULE));
        }
        return Optional.empty();
    }
}

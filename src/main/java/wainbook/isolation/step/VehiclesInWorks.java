package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.process.Releases;
import wainbook.process.draft.InWorks;

/** The vehicles whose work, place and sources rest on what the process says. */
@ApplicationScoped
class VehiclesInWorks implements InWorks {

    private static final List<Phase> HERE = List.of(
            Phase.ORDERED, Phase.DONOR_RECEIVED, Phase.DONOR_ACCEPTED, Phase.ON_LINE, Phase.OFF_LINE, Phase.FINISHED);

    private final Ledger ledger;
    private final Releases releases;

    VehiclesInWorks(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    @Override
    public List<Vehicle> vehicles() {
        return HERE.stream()
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .map(row -> ledger.history(Subject.workOrder(row.number)))
                .flatMap(history -> WorkOrder.of(history).map(order -> vehicle(history, order)).stream())
                .toList();
    }

    private Vehicle vehicle(History history, WorkOrder order) {
        Isolation isolation = Isolation.of(history);
        return new Vehicle(
                order.number(),
                order.ordered().variant(),
                order.ordered().route(),
                order.at().map(Place::place),
                order.bindings().values().stream()
                        .map(bound -> releases.sheet(bound.sheet(), bound.revision()))
                        .toList(),
                isolation.aboard(),
                isolation.state() != State.LIVE);
    }
}

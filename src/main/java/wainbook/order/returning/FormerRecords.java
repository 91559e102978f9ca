package wainbook.order.returning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;

/** The records of a vehicle under the orders before this one. */
@ApplicationScoped
public class FormerRecords {

    private final Ledger ledger;

    FormerRecords(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The latest first; none for a donor that is converted. */
    public List<History> of(WorkOrder order) {
        var former = new ArrayList<History>();
        Optional<WorkOrder> known = Optional.of(order);
        while (known.flatMap(WorkOrder::earlierOrder).isPresent()) {
            History history = ledger.history(
                    Subject.workOrder(known.flatMap(WorkOrder::earlierOrder).get()));
            former.add(history);
            known = WorkOrder.of(history);
        }
        return former;
    }
}

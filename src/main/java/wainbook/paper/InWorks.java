package wainbook.paper;

import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;

/** The vehicles that paper can be about. */
final class InWorks {

    private InWorks() {}

    /** Its stream, if it was ordered and not handed over. */
    static Optional<History> vehicle(Ledger ledger, String number) {
        return Optional.of(number)
                .filter(text -> text.matches(Numbers.FORM))
                .map(text -> ledger.history(Subject.workOrder(text)))
                .filter(history -> WorkOrder.of(history)
                        .filter(order -> order.phase() != WorkOrder.Phase.HANDED_OVER)
                        .isPresent());
    }
}

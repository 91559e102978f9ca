package wainbook.trace.campaign;

import java.util.Optional;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/** Who has a vehicle. */
public final class Whose {

    private Whose() {}

    /** Whether its operator has it: it was handed over, or is awaited back and has not come. */
    public static boolean operator(WorkOrder order) {
        return order.phase() == Phase.HANDED_OVER
                || (order.phase() == Phase.ORDERED && order.earlierOrder().isPresent());
    }

    /** The order under which it came back, or will. */
    public static Optional<String> onward(WorkOrder order) {
        return order.links().onward();
    }
}

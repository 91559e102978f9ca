package wainbook.order.hold;

import java.util.List;
import java.util.Set;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;

/** What holds a vehicle though its own record does not say so; each room knows its own. */
public interface HoldsByRule {

    /** What its holds can stop at all: nobody is asked who cannot. */
    Set<Stops> canStop();

    List<HoldByRule> on(WorkOrder order);
}

package wainbook.trace.campaign;

import java.util.Optional;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.WorkOrder;

/** The registration that a vehicle came with. */
public final class Plate {

    private Plate() {}

    public static Optional<String> of(WorkOrder order) {
        return order.donor()
                .map(DonorReceived::registration)
                .or(() -> order.links().from().map(Returned::registration));
    }
}

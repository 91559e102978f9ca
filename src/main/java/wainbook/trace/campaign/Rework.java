package wainbook.trace.campaign;

import java.util.Optional;
import wainbook.order.WorkOrder.Phase;

/** How far the order has come by which a vehicle comes back. */
public enum Rework {
    NONE,
    ORDERED,
    IN_WORKS,
    HANDED_OVER,
    REJECTED;

    /** @param phase of the rework order; absent where there is none */
    public static Rework of(Optional<Phase> phase) {
        return phase.map(known -> switch (known) {
                    case ORDERED -> ORDERED;
                    case DONOR_RECEIVED, DONOR_ACCEPTED, ON_LINE, OFF_LINE, FINISHED -> IN_WORKS;
                    case DONOR_REJECTED -> REJECTED;
                    case HANDED_OVER -> HANDED_OVER;
                })
                .orElse(NONE);
    }

    /** Whether another may be ordered. */
    boolean over() {
        return this == NONE || this == REJECTED;
    }
}

package wainbook.order.hold;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wainbook.act.Reason;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/** Holds that stand by rule. Whatever asks for the holds on a vehicle’s own record asks here too. */
@ApplicationScoped
public class StandingHolds {

    private final List<HoldsByRule> rooms;

    StandingHolds(@All List<HoldsByRule> rooms) {
        this.rooms = rooms;
    }

    /** All of them, the oldest first. A vehicle that left the works is held by nothing here. */
    public List<HoldByRule> on(WorkOrder order) {
        return stopping(order, EnumSet.allOf(Stops.class));
    }

    /** What stands against any of these, now. */
    public List<Reason> against(WorkOrder order, Stops... what) {
        return against(order, Instant.MAX, what);
    }

    /** The same as far as it stood at a time already: what was lifted since is not known of. */
    public List<Reason> against(WorkOrder order, Instant at, Stops... what) {
        return stopping(order, Set.of(what)).stream()
                .filter(hold -> !hold.since().isAfter(at))
                .map(HoldByRule::against)
                .toList();
    }

    private List<HoldByRule> stopping(WorkOrder order, Set<Stops> what) {
        if (order.phase() == Phase.HANDED_OVER || order.phase() == Phase.DONOR_REJECTED) {
            return List.of();
        }
        return rooms.stream()
                .filter(room -> room.canStop().stream().anyMatch(what::contains))
                .flatMap(room -> room.on(order).stream())
                .filter(hold -> hold.stops().stream().anyMatch(what::contains))
                .sorted(Comparator.comparing(HoldByRule::since).thenComparing(HoldByRule::path))
                .toList();
    }
}

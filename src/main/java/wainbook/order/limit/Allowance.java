package wainbook.order.limit;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Source;

/**
 * What a vehicle without emissions, or with an alternative fuel, may weigh more. Axle limits never rise with it.
 *
 * @param by flat, or as much as the technology weighs more and at most so much
 */
public record Allowance(
        String id, List<Integer> axles, List<Body> bodies, By by, int kg, Optional<Force> force, Source source) {

    /** How it is reckoned. */
    public enum By {
        FLAT,
        TECHNOLOGY
    }

    public Allowance {
        axles = List.copyOf(axles);
        bodies = List.copyOf(bodies);
        force = force.or(() -> Optional.of(Force.ALWAYS));
    }

    boolean fits(int ofAxles, Body body) {
        return axles.contains(ofAxles) && bodies.contains(body);
    }
}

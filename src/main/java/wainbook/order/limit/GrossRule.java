package wainbook.order.limit;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Source;

/**
 * What a vehicle without trailer may weigh.
 *
 * @param twinAir holds only with twin tyres and air suspension on the driven axle, or each driven axle on twin tyres and at most 9500 kg
 * @param perMetreKg for each metre from first to last axle; the total is rounded up to 10 kg
 * @param perMetreSource of the same
 */
public record GrossRule(
        String id,
        int axles,
        List<Body> bodies,
        Optional<Boolean> twinAir,
        int kg,
        Optional<Integer> perMetreKg,
        Optional<Source> perMetreSource,
        Optional<Force> force,
        Source source) {

    private static final double ROUNDED_KG = 10;
    private static final double SLIGHTLY = 1e-9;

    public GrossRule {
        bodies = List.copyOf(bodies);
        force = force.or(() -> Optional.of(Force.ALWAYS));
    }

    boolean fits(int ofAxles, Body body) {
        return axles == ofAxles && bodies.contains(body);
    }

    /** @return kilograms by the distance of the axles; empty where the rule knows none */
    Optional<Integer> bySpacing(Optional<Double> firstToLastM) {
        return perMetreKg.flatMap(factor -> firstToLastM.map(metres -> rounded(metres * factor)));
    }

    /** Rounded up to 10 kg; a billionth more does not ask for another 10. */
    static int rounded(double kg) {
        return (int) (Math.ceil(kg / ROUNDED_KG - SLIGHTLY) * ROUNDED_KG);
    }
}

package wainbook.engineering.weights.weighing;

import java.util.List;
import java.util.function.ToDoubleFunction;
import wainbook.engineering.weights.TwoAxles;

/**
 * Loads of the groups after changes, with their standard uncertainties: u(R)² = u₀² + Σ[(x/L)² u(m)² + (m/L)² u(x)²], and 1 − x/L in
 * place of x/L for the front. From memory; propagation of uncertainty as in any textbook.
 */
public record Prediction(TwoAxles loads, double frontUKg, double rearUKg, double totalUKg) {

    /**
     * @param weighed before the changes
     * @param weighedUKg standard uncertainty of each of its two loads
     */
    public static Prediction of(TwoAxles weighed, double weighedUKg, List<Change> changes) {
        TwoAxles loads = weighed;
        for (Change change : changes) {
            loads = loads.with(change.massKg(), change.leverM());
        }
        double wheelbaseM = weighed.wheelbaseM();
        return new Prediction(
                loads,
                u(weighedUKg, changes, wheelbaseM, change -> 1 - change.leverM() / wheelbaseM),
                u(weighedUKg, changes, wheelbaseM, change -> change.leverM() / wheelbaseM),
                Math.sqrt(2 * weighedUKg * weighedUKg
                        + changes.stream()
                                .mapToDouble(change -> change.massUKg() * change.massUKg())
                                .sum()));
    }

    private static double u(double own, List<Change> changes, double wheelbaseM, ToDoubleFunction<Change> share) {
        return Math.sqrt(own * own
                + changes.stream()
                        .mapToDouble(change -> square(share.applyAsDouble(change) * change.massUKg())
                                + square(change.massKg() / wheelbaseM * change.leverUM()))
                        .sum());
    }

    private static double square(double value) {
        return value * value;
    }
}

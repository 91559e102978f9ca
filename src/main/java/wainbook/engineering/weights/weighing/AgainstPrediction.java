package wainbook.engineering.weights.weighing;

/**
 * A load as weighed against the same as predicted. Works rule, common practice, no source: they agree where |d| ≤ 2 √(u_p² + u_w²), and
 * more than a fixed difference is never taken without a reason.
 */
public record AgainstPrediction(double predictedKg, double predictedUKg, double weighedKg, double weighedUKg) {

    /** For one axle. */
    public static final double NEVER_WITHOUT_REASON_KG = 100;

    public double differenceKg() {
        return weighedKg - predictedKg;
    }

    public double permittedKg() {
        return Math.min(expandedKg(), NEVER_WITHOUT_REASON_KG);
    }

    /** @return k = 2 */
    public double expandedKg() {
        return 2 * Math.hypot(predictedUKg, weighedUKg);
    }

    /** @return of the difference to what both uncertainties explain; above 1 they do not */
    public double ratio() {
        return Math.abs(differenceKg()) / expandedKg();
    }

    public boolean agrees() {
        return Math.abs(differenceKg()) <= permittedKg();
    }
}

package wainbook.engineering.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What the range and the standard deviation of n normal values are on average, in their σ: d2 and d3 as mean and standard
 * deviation of the range W, by integration of P(W ≤ w) = n ∫ φ(x) (Φ(x + w) − Φ(x))ⁿ⁻¹ dx; c4 as mean of s, by its gamma
 * functions. Agrees with the printed tables to all their digits.
 */
public record ChartConstants(int n, double d2, double d3, double c4) {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final double END = 9;
    private static final int WIDTHS = 720;
    private static final double WIDTH_STEP = 2 * END / WIDTHS;
    private static final int PLACES = 180;
    private static final double PLACE_STEP = 2 * END / PLACES;

    /** @param n from 2 to 25 */
    public static ChartConstants of(int n) {
        double mean = 0;
        double square = 0;
        for (int i = 0; i <= WIDTHS; i++) {
            double w = i * WIDTH_STEP;
            double weight = (i == 0 || i == WIDTHS ? 1 : i % 2 == 1 ? 4 : 2) * WIDTH_STEP / 3;
            double beyond = 1 - rangeWithin(w, n);
            mean += weight * beyond;
            square += weight * 2 * w * beyond;
        }
        return new ChartConstants(n, mean, Math.sqrt(square - mean * mean), c4(n));
    }

    /** For the range of a single sample: √(d2² + d3²). */
    public double d2OfOne() {
        return Math.hypot(d2, d3);
    }

    double a2() {
        return 3 / (d2 * Math.sqrt(n));
    }

    double a3() {
        return 3 / (c4 * Math.sqrt(n));
    }

    double rangeFactor(int side) {
        return Math.max(0, 1 + side * 3 * d3 / d2);
    }

    double deviationFactor(int side) {
        return Math.max(0, 1 + side * 3 * Math.sqrt(1 - c4 * c4) / c4);
    }

    private static double rangeWithin(double w, int n) {
        double sum = 0;
        for (int i = 0; i <= PLACES; i++) {
            double x = -END + i * PLACE_STEP;
            double inside = NORMAL.probability(x, x + w);
            sum += NORMAL.density(x) * Math.pow(inside, n - 1);
        }
        return n * sum * PLACE_STEP;
    }

    /** √(2/(n − 1)) · Γ(n/2) / Γ((n − 1)/2), the ratio climbed from n = 2. */
    private static double c4(int n) {
        double ratio = 1 / Math.sqrt(Math.PI);
        for (int k = 2; k < n; k++) {
            ratio = (k - 1) / 2.0 / ratio;
        }
        return Math.sqrt(2 / (n - 1.0)) * ratio;
    }
}

package wainbook.engineering.flow.score;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Mean of differences, pair by pair, and half of its interval t · s / √n: what a change does, seen with the same luck before and after.
 *
 * @param halfWidth positive infinity for a single pair
 */
public record PairedDifference(double mean, double halfWidth, int pairs) {

    /**
     * @param before and {@code after}: as many, in the same order
     * @param confidence between 0 and 1
     */
    public static PairedDifference of(double[] before, double[] after, double confidence) {
        int n = before.length;
        if (n == 0 || after.length != n) {
            throw new IllegalArgumentException(n + " and " + after.length + " values make no pairs");
        }
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += (after[i] - before[i]) / n;
        }
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double off = after[i] - before[i] - mean;
            squares += off * off;
        }
        double half = n == 1
                ? Double.POSITIVE_INFINITY
                : TDistribution.of(n - 1.0).inverseSurvivalProbability((1 - confidence) / 2)
                        * Math.sqrt(squares / (n - 1) / n);
        return new PairedDifference(mean, half, n);
    }

    public double low() {
        return mean - halfWidth;
    }

    public double high() {
        return mean + halfWidth;
    }
}

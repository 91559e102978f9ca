package wainbook.engineering.flow.score;

/**
 * Continuous ranked probability score of draws against what came: E|X − y| − E|X − X′| / 2, in the unit of the values, less is better
 * (T. Gneiting and A. E. Raftery, 2007, from memory). For a single draw it is the plain error.
 */
public final class Crps {

    private Crps() {}

    /**
     * With 2 m² below the double sum: the score of the draws as they are.
     *
     * @param sorted rising, at least one
     */
    public static double plain(double[] sorted, double outcome) {
        double m = sorted.length;
        return distance(sorted, outcome) - apart(sorted, outcome) / (m * m);
    }

    /**
     * With 2 m (m − 1): the score that more draws of the same law would come to.
     *
     * @param sorted rising, at least two
     */
    public static double fair(double[] sorted, double outcome) {
        double m = sorted.length;
        return distance(sorted, outcome) - apart(sorted, outcome) / (m * (m - 1));
    }

    private static double distance(double[] sorted, double outcome) {
        double sum = 0;
        for (double draw : sorted) {
            sum += Math.abs(draw - outcome);
        }
        return sum / sorted.length;
    }

    /** Sum of the distances of all pairs, each taken once; from the outcome, so that a large common part costs no digits. */
    private static double apart(double[] sorted, double outcome) {
        int m = sorted.length;
        double sum = 0;
        for (int i = 0; i < m; i++) {
            sum += (2.0 * i - m + 1) * (sorted[i] - outcome);
        }
        return sum;
    }
}

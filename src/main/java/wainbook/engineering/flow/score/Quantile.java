package wainbook.engineering.flow.score;

/**
 * Quantiles of values as R. J. Hyndman and Y. Fan number them (1996): with m = a + p (1 − 2a), i = ⌊n p + m⌋, g = n p + m − i it is
 * (1 − g) x(i) + g x(i + 1), the ends held. Type 7 for simulated draws, of which there are many; type 8, nearly without bias of the
 * median, for a short history.
 */
public enum Quantile {
    TYPE_7(1),
    TYPE_8(1.0 / 3);

    private final double a;

    Quantile(double a) {
        this.a = a;
    }

    /**
     * @param sorted rising, at least one
     * @param p from 0 to 1
     */
    public double of(double[] sorted, double p) {
        int n = sorted.length;
        double place = n * p + a + p * (1 - 2 * a);
        int below = (int) Math.floor(place);
        if (below < 1) {
            return sorted[0];
        }
        if (below >= n) {
            return sorted[n - 1];
        }
        double low = sorted[below - 1];
        double high = sorted[below];
        return low == high ? low : low + (place - below) * (high - low);
    }
}

package wainbook.engineering.flow.score;

/** Proper scores: who says what they believe does best on average. Less is better (Gneiting and Raftery, 2007, from memory). */
public final class Scores {

    private Scores() {}

    /**
     * Of a quantile.
     *
     * @param p between 0 and 1
     * @param quantile what was said
     * @param outcome what came
     */
    public static double pinball(double p, double quantile, double outcome) {
        return outcome >= quantile ? (outcome - quantile) * p : (quantile - outcome) * (1 - p);
    }

    /**
     * Of a central interval: its width, and what came outside it 2 / (1 − held)-fold.
     *
     * @param held 0.8 for an interval of 80 %
     */
    public static double interval(double held, double low, double high, double outcome) {
        double dear = 2 / (1 - held);
        return high - low + dear * Math.max(0, low - outcome) + dear * Math.max(0, outcome - high);
    }

    /** Of odds that something happens. */
    public static double brier(double odds, boolean happened) {
        double off = odds - (happened ? 1 : 0);
        return off * off;
    }
}

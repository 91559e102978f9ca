package wainbook.engineering.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** So many events in so many pieces, and in which interval the share behind them lies. */
public record Share(int events, int pieces) {

    public record Interval(double low, double high) {}

    public Share {
        if (pieces < 1 || events < 0 || events > pieces) {
            throw new IllegalArgumentException(events + " of " + pieces + " is no share");
        }
    }

    public double rate() {
        return events / (double) pieces;
    }

    /**
     * Exact interval by Clopper and Pearson.
     *
     * @param confidence both sides together, between 0 and 1
     */
    public Interval exact(double confidence) {
        double tail = (1 - confidence) / 2;
        double low = events == 0
                ? 0
                : BetaDistribution.of(events, pieces - events + 1.0).inverseCumulativeProbability(tail);
        double high = events == pieces
                ? 1
                : BetaDistribution.of(events + 1.0, pieces - events).inverseSurvivalProbability(tail);
        return new Interval(low, high);
    }

    /**
     * Interval by Wilson's score.
     *
     * @param confidence both sides together, between 0 and 1
     */
    public Interval score(double confidence) {
        double z = z(confidence);
        double middle = scoreMiddle(z);
        double half = scoreHalf(z);
        return new Interval(events == 0 ? 0 : middle - half, events == pieces ? 1 : middle + half);
    }

    static double z(double confidence) {
        return NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - confidence) / 2);
    }

    double scoreMiddle(double z) {
        double n = pieces;
        return (rate() + z * z / (2 * n)) / (1 + z * z / n);
    }

    double scoreHalf(double z) {
        double n = pieces;
        double rate = rate();
        return z * Math.sqrt(rate * (1 - rate) / n + z * z / (4 * n * n)) / (1 + z * z / n);
    }
}

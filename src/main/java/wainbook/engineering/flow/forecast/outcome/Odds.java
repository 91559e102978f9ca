package wainbook.engineering.flow.forecast.outcome;

import wainbook.engineering.statistics.Share;

/**
 * The odds of something, from draws. A share that no draw, or every draw, has is put between the last two that could be told apart:
 * draws never make certain.
 *
 * @param low and {@code high}: 95 % interval by Wilson's score; of the draws alone, not of the model
 */
public record Odds(double share, double low, double high) {

    private static final double CONFIDENCE = 0.95;

    static Odds of(int events, int draws) {
        var share = new Share(events, draws);
        var interval = share.score(CONFIDENCE);
        double least = 1 / (draws + 1.0);
        return new Odds(Math.max(least, Math.min(1 - least, share.rate())), interval.low(), interval.high());
    }

    static Odds certain(boolean happened) {
        double share = happened ? 1 : 0;
        return new Odds(share, share, share);
    }
}

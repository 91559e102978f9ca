package wainbook.engineering.flow.score;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Between which of n sorted draws the true quantile lies, whatever their law: P(x(l) ≤ q ≤ x(u)) = Σ C(n,k) p^k (1−p)^(n−k) for k
 * from l to u − 1 (H. A. David and H. N. Nagaraja, from memory). It speaks of the number of draws alone, not of the model.
 *
 * @param lower rank from 1; 0 if no draw is low enough
 * @param upper rank from 1; n + 1 if no draw is high enough
 * @param confidence that the pair really has, at least what was asked
 */
public record RankInterval(int lower, int upper, double confidence) {

    /**
     * @param n draws, at least 1
     * @param p of the quantile, between 0 and 1
     * @param confidence asked, both sides together
     */
    public static RankInterval of(int n, double p, double confidence) {
        var count = BinomialDistribution.of(n, p);
        double tail = (1 - confidence) / 2;
        int lower = count.inverseCumulativeProbability(tail);
        int upper = count.inverseCumulativeProbability(1 - tail) + 1;
        return new RankInterval(
                lower, upper, count.cumulativeProbability(upper - 1) - count.cumulativeProbability(lower - 1));
    }
}

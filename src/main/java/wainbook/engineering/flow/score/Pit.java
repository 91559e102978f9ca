package wainbook.engineering.flow.score;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Where in its forecast what came fell, from 0 to 1: even over many forecasts if they are right, at both ends if they are too narrow,
 * in the middle if too wide, at one end if biased.
 *
 * @param chiSquare of the classes against even ones
 * @param p chance of so uneven a count of right forecasts
 */
public record Pit(double chiSquare, double p) {

    /**
     * @param sorted draws of the forecast, rising
     * @param v from 0 to 1, drawn: shares the place of ties out
     */
    public static double place(double[] sorted, double outcome, double v) {
        int below = 0;
        int ties = 0;
        for (double draw : sorted) {
            below += draw < outcome ? 1 : 0;
            ties += draw == outcome ? 1 : 0;
        }
        return (below + v * (ties + 1)) / (sorted.length + 1);
    }

    /** @param counts of places by classes of equal width, at least two of them, not all nought */
    public static Pit of(List<Integer> counts) {
        double expected = counts.stream().mapToInt(count -> count).average().orElseThrow();
        double chi = counts.stream()
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        return new Pit(chi, ChiSquaredDistribution.of(counts.size() - 1.0).survivalProbability(chi));
    }
}

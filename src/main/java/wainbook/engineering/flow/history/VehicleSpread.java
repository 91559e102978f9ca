package wainbook.engineering.flow.history;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * How much of the scatter of times belongs to the vehicles: one-way analysis of variance with random vehicles, σ_a² = (MSA − MSE) / n₀;
 * none where the F test does not show it at 5 %.
 *
 * @param between standard deviation of the logarithms of the vehicles' factors
 * @param within standard deviation of one stage's logarithm about its vehicle's factor
 */
public record VehicleSpread(double between, double within) {

    private static final double SHOWN = 0.05;

    /** The vehicles' part of the variance, from 0 to 1. */
    public double share() {
        double all = between * between + within * within;
        return all > 0 ? between * between / all : 0;
    }

    static VehicleSpread of(List<Finished> records, ToDoubleFunction<Finished> residual) {
        Map<String, List<Finished>> groups =
                records.stream().collect(Collectors.groupingBy(Finished::vehicle, TreeMap::new, Collectors.toList()));
        int n = records.size();
        int k = groups.size();
        double mean = records.stream().mapToDouble(residual).average().orElse(0);
        double between = 0;
        double within = 0;
        double squares = 0;
        for (List<Finished> group : groups.values()) {
            double own = group.stream().mapToDouble(residual).average().orElseThrow();
            between += group.size() * (own - mean) * (own - mean);
            within += group.stream()
                    .mapToDouble(residual)
                    .map(one -> (one - own) * (one - own))
                    .sum();
            squares += (double) group.size() * group.size();
        }
        if (k < 2 || n <= k || within == 0) {
            return new VehicleSpread(0, n < 2 ? 0 : Math.sqrt((between + within) / (n - 1)));
        }
        double msa = between / (k - 1);
        double mse = within / (n - k);
        double p = FDistribution.of(k - 1.0, n - k).survivalProbability(msa / mse);
        double each = (n - squares / n) / (k - 1);
        return p < SHOWN
                ? new VehicleSpread(Math.sqrt((msa - mse) / each), Math.sqrt(mse))
                : new VehicleSpread(0, Math.sqrt((between + within) / (n - 1)));
    }
}

package wainbook.engineering.flow.forecast.model;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A time whose logarithm follows the normal law. A job that has gone on for long is not almost done: what is left of it hardly
 * shrinks.
 *
 * @param medianMinutes at least 0
 * @param sigma standard deviation of the logarithm; 0 for always the same
 */
public record Lognormal(double medianMinutes, double sigma) implements Minutes {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    public Lognormal {
        if (!(medianMinutes >= 0) || !(sigma >= 0)) {
            throw new IllegalArgumentException("no lognormal law has the median " + medianMinutes + ", sigma " + sigma);
        }
    }

    /** @param cv standard deviation over mean */
    public static Lognormal ofMean(double meanMinutes, double cv) {
        double variance = Math.log1p(cv * cv);
        return new Lognormal(meanMinutes * Math.exp(-variance / 2), Math.sqrt(variance));
    }

    /** Mean and standard deviation (n − 1) of the logarithms; times of nought count as a thousandth of a minute. */
    public static Lognormal fitted(List<Double> values) {
        return fitted(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    static Lognormal fitted(double[] values) {
        int n = values.length;
        double mean = 0;
        for (double value : values) {
            mean += Math.log(Math.max(1e-3, value)) / n;
        }
        double squares = 0;
        for (double value : values) {
            double off = Math.log(Math.max(1e-3, value)) - mean;
            squares += off * off;
        }
        return new Lognormal(Math.exp(mean), n < 2 ? 0 : Math.sqrt(squares / (n - 1)));
    }

    @Override
    public Minutes times(double factor) {
        return new Lognormal(medianMinutes * factor, sigma);
    }

    @Override
    public double at(double u) {
        return sigma == 0 ? medianMinutes : medianMinutes * Math.exp(sigma * STANDARD.inverseCumulativeProbability(u));
    }

    /** The time beyond which a share (1 − u) of those lie that take longer than what has gone. */
    @Override
    public double left(double elapsed, double u) {
        double beyond = beyond(elapsed);
        if (sigma == 0 || beyond == 0) {
            return Math.max(0, medianMinutes - elapsed);
        }
        double whole = medianMinutes * Math.exp(sigma * STANDARD.inverseSurvivalProbability((1 - u) * beyond));
        return Math.max(0, whole - elapsed);
    }

    @Override
    public double beyond(double elapsed) {
        if (elapsed <= 0 || sigma == 0) {
            return medianMinutes > elapsed ? 1 : 0;
        }
        return STANDARD.survivalProbability(Math.log(elapsed / medianMinutes) / sigma);
    }
}

package wainbook.engineering.statistics;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Values in the order of time; mean and standard deviation in two passes, so that a large mean costs no digits. */
public record Sample(List<Double> values) {

    /** The textbooks' divisor of a mean moving range of two. */
    static final double D2_OF_TWO = 1.128;

    public Sample {
        values = List.copyOf(values);
    }

    int n() {
        return values.size();
    }

    DoubleStream stream() {
        return values.stream().mapToDouble(Double::doubleValue);
    }

    double mean() {
        return stream().average().orElseThrow();
    }

    /** With n − 1 below. */
    public double s() {
        double mean = mean();
        return Math.sqrt(stream().map(value -> (value - mean) * (value - mean)).sum() / (n() - 1));
    }

    double range() {
        return stream().max().orElseThrow() - stream().min().orElseThrow();
    }

    /** Of the values' distances from each to the next. */
    double movingRangeMean() {
        return IntStream.range(1, n())
                .mapToDouble(one -> Math.abs(values.get(one) - values.get(one - 1)))
                .average()
                .orElseThrow();
    }
}

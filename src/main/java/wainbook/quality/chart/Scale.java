package wainbook.quality.chart;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.quality.reading.Reading;

/**
 * What the values of a chart are drawn as. As they were read, where all had the same limits; else in percent of what each was
 * allowed, so that unlike vehicles and joints stand on one chart (ISO 7870-8: the process is charted, not the part).
 */
public enum Scale {
    /** As read, in its unit. */
    AS_READ {
        @Override
        boolean fits(Reading reading) {
            return true;
        }

        @Override
        double of(Reading reading) {
            return reading.value().doubleValue();
        }

        @Override
        Optional<Double> lower(Reading any) {
            return any.lower().map(BigDecimal::doubleValue);
        }

        @Override
        Optional<Double> upper(Reading any) {
            return any.upper().map(BigDecimal::doubleValue);
        }
    },
    /** (x − middle of the limits) / half the tolerance · 100 %: the limits are ± 100. */
    OF_TOLERANCE {
        @Override
        boolean fits(Reading reading) {
            return reading.bothLimits()
                    && reading.lower().get().compareTo(reading.upper().get()) < 0;
        }

        @Override
        double of(Reading reading) {
            double lower = reading.lower().orElseThrow().doubleValue();
            double upper = reading.upper().orElseThrow().doubleValue();
            return 100 * (reading.value().doubleValue() - (lower + upper) / 2) / ((upper - lower) / 2);
        }

        @Override
        Optional<Double> lower(Reading any) {
            return Optional.of(-100.0);
        }

        @Override
        Optional<Double> upper(Reading any) {
            return Optional.of(100.0);
        }
    },
    /** (U − x) / U · 100 %: what is left to the upper limit; below nought is outside. */
    LEFT_TO_UPPER {
        @Override
        boolean fits(Reading reading) {
            return positive(reading.upper());
        }

        @Override
        double of(Reading reading) {
            double limit = reading.upper().orElseThrow().doubleValue();
            return 100 * (limit - reading.value().doubleValue()) / limit;
        }

        @Override
        Optional<Double> lower(Reading any) {
            return Optional.of(0.0);
        }

        @Override
        Optional<Double> upper(Reading any) {
            return Optional.empty();
        }
    },
    /** (x − L) / L · 100 %: what is left to the lower limit; below nought is outside. */
    LEFT_TO_LOWER {
        @Override
        boolean fits(Reading reading) {
            return positive(reading.lower());
        }

        @Override
        double of(Reading reading) {
            double limit = reading.lower().orElseThrow().doubleValue();
            return 100 * (reading.value().doubleValue() - limit) / limit;
        }

        @Override
        Optional<Double> lower(Reading any) {
            return Optional.of(0.0);
        }

        @Override
        Optional<Double> upper(Reading any) {
            return Optional.empty();
        }
    };

    abstract boolean fits(Reading reading);

    abstract double of(Reading reading);

    /** The lower limit on this scale, where every reading of a chart has it. */
    abstract Optional<Double> lower(Reading any);

    abstract Optional<Double> upper(Reading any);

    private static boolean positive(Optional<BigDecimal> limit) {
        return limit.map(known -> known.signum() > 0).orElse(false);
    }

    /** The plainest that serves them all; where none does, the one that serves most, and the others are left out. */
    static Scale of(List<Reading> readings, boolean mixed) {
        if (!mixed && alike(readings)) {
            return AS_READ;
        }
        return Stream.of(OF_TOLERANCE, LEFT_TO_UPPER, LEFT_TO_LOWER)
                .max((one, other) -> Long.compare(one.serves(readings), other.serves(readings)) != 0
                        ? Long.compare(one.serves(readings), other.serves(readings))
                        : other.compareTo(one))
                .orElseThrow();
    }

    private long serves(List<Reading> readings) {
        return readings.stream().filter(this::fits).count();
    }

    private static boolean alike(List<Reading> readings) {
        Reading first = readings.get(0);
        return readings.stream()
                .allMatch(one -> one.unit().equals(first.unit())
                        && same(one.lower(), first.lower())
                        && same(one.upper(), first.upper()));
    }

    private static boolean same(Optional<BigDecimal> one, Optional<BigDecimal> other) {
        return Objects.equals(one.map(BigDecimal::stripTrailingZeros), other.map(BigDecimal::stripTrailingZeros));
    }
}

package wainbook.process.sheet;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * What a reading must keep to, in the unit of the quantity. An absent end is open.
 *
 * @param strict whether a reading on the limit itself is outside
 * @param source where the limit comes from, with its clause
 */
public record Limits(Optional<BigDecimal> lower, Optional<BigDecimal> upper, boolean strict, Optional<String> source) {

    public Limits {
        if (lower.isEmpty() && upper.isEmpty()) {
            throw new IllegalArgumentException("limits have at least one end");
        }
    }

    public static Limits between(BigDecimal lower, BigDecimal upper) {
        return new Limits(Optional.of(lower), Optional.of(upper), false, Optional.empty());
    }

    public static Limits atLeast(BigDecimal lower) {
        return new Limits(Optional.of(lower), Optional.empty(), false, Optional.empty());
    }

    public static Limits atMost(BigDecimal upper) {
        return new Limits(Optional.empty(), Optional.of(upper), false, Optional.empty());
    }

    /** Exact: decimals are compared as typed, never after rounding. */
    public boolean admits(BigDecimal reading) {
        int nearest = strict ? 1 : 0;
        return lower.map(limit -> reading.compareTo(limit) >= nearest).orElse(true)
                && upper.map(limit -> limit.compareTo(reading) >= nearest).orElse(true);
    }

    public boolean crossed() {
        return lower.isPresent() && upper.isPresent() && lower.get().compareTo(upper.get()) > 0;
    }

    /** Whether everything that these admit is admitted by the others too. */
    public boolean within(Limits outer) {
        return outer.lower()
                        .map(limit -> lower.map(own -> keeps(own.compareTo(limit), outer))
                                .orElse(false))
                        .orElse(true)
                && outer.upper()
                        .map(limit -> upper.map(own -> keeps(limit.compareTo(own), outer))
                                .orElse(false))
                        .orElse(true);
    }

    private boolean keeps(int inside, Limits outer) {
        return inside > 0 || (inside == 0 && (strict || !outer.strict()));
    }
}

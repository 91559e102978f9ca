package wainbook.engineering.flow.simulation;

import java.util.Locale;

/** The law that work times follow. */
public enum Law {
    EXPONENTIAL,
    DETERMINISTIC,
    LOGNORMAL,
    UNIFORM;

    /** Coefficient of variation of a uniform law that begins at nought, and so the most that one without negative times can have. */
    public static final double WIDEST_UNIFORM = 1 / Math.sqrt(3);

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}

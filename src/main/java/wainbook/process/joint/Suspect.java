package wainbook.process.joint;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.process.joint.Joint.Window;

/**
 * What torque and angle together let one suspect at a fastener. The angle counts from the snug torque. Common practice in
 * the trade, no source; the second hit below five degrees is a works rule.
 */
public enum Suspect {
    /** Torque inside, hardly any angle: it was tight already. No tightening at all. */
    SECOND_HIT,
    /** Torque inside, angle below its window. */
    ALREADY_TIGHT,
    /** Torque inside, angle above its window. */
    YIELDING,
    /** Torque below, angle above. */
    STRIPPED,
    /** Both below. */
    STOPPED_EARLY,
    /** Torque above, angle below. */
    SEIZED;

    private static final BigDecimal SECOND_HIT_DEGREES = BigDecimal.valueOf(5);

    private enum Side {
        LOW,
        OK,
        HIGH;

        static Side of(BigDecimal value, Window window) {
            if (window.holds(value)) {
                return OK;
            }
            return value.compareTo(window.lower()) < 0 ? LOW : HIGH;
        }
    }

    /** Empty where both are inside, and where the two together say no more than one alone. */
    public static Optional<Suspect> of(Window limitsNm, Window windowDegrees, BigDecimal torqueNm, BigDecimal degrees) {
        Side torque = Side.of(torqueNm, limitsNm);
        return switch (Side.of(degrees, windowDegrees)) {
            case OK -> Optional.empty();
            case LOW ->
                switch (torque) {
                    case LOW -> Optional.of(STOPPED_EARLY);
                    case OK -> Optional.of(degrees.compareTo(SECOND_HIT_DEGREES) < 0 ? SECOND_HIT : ALREADY_TIGHT);
                    case HIGH -> Optional.of(SEIZED);
                };
            case HIGH ->
                switch (torque) {
                    case LOW -> Optional.of(STRIPPED);
                    case OK -> Optional.of(YIELDING);
                    case HIGH -> Optional.empty();
                };
        };
    }

    public String inWords() {
        return Words.of("process.suspect." + name());
    }
}

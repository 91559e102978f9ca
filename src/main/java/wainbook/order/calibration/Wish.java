package wainbook.order.calibration;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.process.calibration.Setting;

/**
 * One value asked for.
 *
 * @param value in the setting's unit
 * @param tolerance how far a calibration may lie from it, either way, in the same unit
 * @param promise the number of the promise that it comes from, where {@code by} says so
 * @param why in words
 */
public record Wish(
        Setting setting, BigDecimal value, BigDecimal tolerance, By by, Optional<Integer> promise, String why) {

    /** Whose wish it is: whoever asked may have it changed. */
    public enum By {
        OPERATOR,
        PROMISE,
        WORKS
    }

    /** Empty within the tolerance; else what was found less what was asked. */
    public Optional<BigDecimal> off(BigDecimal found) {
        BigDecimal difference = found.subtract(value);
        return difference.abs().compareTo(tolerance) > 0 ? Optional.of(difference) : Optional.empty();
    }
}

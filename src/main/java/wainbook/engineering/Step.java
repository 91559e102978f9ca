package wainbook.engineering;

import java.util.Arrays;

/**
 * One line of a working.
 *
 * @param name key of the line's name, under {@code engineering.step.}
 * @param formula in symbols
 * @param figures the same with the figures put in
 */
public record Step(String name, String formula, String figures, double value, String unit) {

    /** @param figures the formula's right side with {@code %s} for each of the numbers that follow */
    public static Step of(String name, String formula, double value, String unit, String figures, Object... numbers) {
        Object[] written = Arrays.stream(numbers).map(Plain::text).toArray();
        return new Step(name, formula, String.format(figures, written), value, unit);
    }
}

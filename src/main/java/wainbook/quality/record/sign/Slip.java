package wainbook.quality.record.sign;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import wainbook.quality.reading.Reading;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Figures;
import wainbook.quality.record.made.Made;

/**
 * A reading far outside its limits that would lie well inside them but for one slip: the point one place on, a torque typed
 * in another unit, two neighbouring digits swapped. It is never put right by itself.
 */
public final class Slip {

    /** What a torque in N·m turns into when it is typed as lbf·ft, kgf·m or lbf·in, and the other way round. */
    private static final double[] UNITS = {0.737562, 1.355818, 0.101972, 9.80665, 8.850746, 0.112985};

    private static final double[] POINT = {10, 0.1, 100, 0.01};
    private static final double NEAR_UNIT = 0.05;
    private static final double NEAR_POINT = 0.15;
    private static final String TORQUE = "N·m";

    private Slip() {}

    public static Optional<Question> in(Made made) {
        return made.readings().stream()
                .filter(reading -> reading.failed() && reading.bothLimits())
                .flatMap(reading -> meant(reading).map(meant -> question(made, reading, meant)).stream())
                .findFirst();
    }

    private static Question question(Made made, Reading reading, String meant) {
        return new Question(
                Rule.SLIP,
                made.person(),
                List.of(reading),
                made.at(),
                List.of(reading.value().toPlainString(), reading.unit(), meant),
                1);
    }

    private static Optional<String> meant(Reading reading) {
        double value = reading.value().doubleValue();
        double target = reading.target().map(BigDecimal::doubleValue).orElseGet(() -> middle(reading));
        if (target == 0) {
            return Optional.empty();
        }
        if (wide(value, reading) && near(value / target, POINT, NEAR_POINT)) {
            return Optional.of(Figures.of(value * nearest(target / value)));
        }
        if (!far(value, reading)) {
            return Optional.empty();
        }
        return reading.unit().equals(TORQUE) && near(value / target, UNITS, NEAR_UNIT)
                ? Optional.of(Figures.of(target))
                : swapped(reading);
    }

    /** Two whole tolerances and more outside: what failed by less is seen on bolts and instruments. */
    private static boolean far(double value, Reading reading) {
        double lower = reading.lower().orElseThrow().doubleValue();
        double upper = reading.upper().orElseThrow().doubleValue();
        return value < lower - 2 * (upper - lower) || value > upper + 2 * (upper - lower);
    }

    /** Twice the upper limit or half the lower one: beside a limit near nought a tenth of the middle is a plain failure. */
    private static boolean wide(double value, Reading reading) {
        double size = Math.abs(value);
        return size > 2 * Math.abs(reading.upper().orElseThrow().doubleValue())
                || size < Math.abs(reading.lower().orElseThrow().doubleValue()) / 2;
    }

    private static double middle(Reading reading) {
        return (reading.lower().orElseThrow().doubleValue()
                        + reading.upper().orElseThrow().doubleValue())
                / 2;
    }

    private static boolean near(double ratio, double[] factors, double within) {
        return DoubleStream.of(factors).anyMatch(factor -> Math.abs(ratio / factor - 1) <= within);
    }

    private static double nearest(double ratio) {
        return Math.pow(10, Math.rint(Math.log10(ratio)));
    }

    private static Optional<String> swapped(Reading reading) {
        String text = reading.value().toPlainString();
        for (int i = 0; i + 1 < text.length(); i++) {
            if (Character.isDigit(text.charAt(i)) && Character.isDigit(text.charAt(i + 1))) {
                String other = text.substring(0, i) + text.charAt(i + 1) + text.charAt(i) + text.substring(i + 2);
                BigDecimal value = new BigDecimal(other);
                if (value.compareTo(reading.lower().orElseThrow()) >= 0
                        && value.compareTo(reading.upper().orElseThrow()) <= 0) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }
}

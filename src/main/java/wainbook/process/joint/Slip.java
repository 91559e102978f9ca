package wainbook.process.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.process.joint.Joint.Torque;

/**
 * A torque outside its limits that looks like another one typed wrong: read in another unit, the decimal point slipped, two
 * digits swapped. It is asked about and never corrected. The factors are definitions; how near counts as a works rule.
 *
 * @param meant the torque in N·m that it may have been
 */
public record Slip(Sort sort, BigDecimal typedNm, BigDecimal meant) {

    /** What may have happened. */
    public enum Sort {
        DIGITS_SWAPPED(1, 0),
        TENFOLD(10, 0.15),
        TENTH(0.1, 0.15),
        HUNDREDFOLD(100, 0.15),
        HUNDREDTH(0.01, 0.15),
        POUND_FEET(0.737562, 0.05),
        POUND_INCHES(8.850746, 0.05),
        KILOGRAM_METRES(0.101972, 0.05);

        private final double factor;
        private final double near;

        Sort(double factor, double near) {
            this.factor = factor;
            this.near = near;
        }

        private double apart(double ratio) {
            return Math.abs(ratio / factor - 1);
        }
    }

    /** The likeliest slip; empty for a torque inside its limits, and for one that is merely bad. */
    public static Optional<Slip> of(Torque torque, BigDecimal typedNm) {
        if (torque.limitsNm().holds(typedNm) || typedNm.signum() <= 0) {
            return Optional.empty();
        }
        return swapped(torque, typedNm).or(() -> factor(torque, typedNm));
    }

    /** As a question. */
    public String inWords() {
        return Words.of("process.slip." + sort, typedNm.toPlainString(), meant.toPlainString());
    }

    private static Optional<Slip> factor(Torque torque, BigDecimal typedNm) {
        double ratio = typedNm.doubleValue() / torque.targetNm().doubleValue();
        return List.of(Sort.values()).stream()
                .filter(sort -> sort.near > 0 && sort.apart(ratio) <= sort.near)
                .min(Comparator.comparingDouble(sort -> sort.apart(ratio)))
                .map(sort -> new Slip(sort, typedNm, meant(typedNm, sort)));
    }

    private static BigDecimal meant(BigDecimal typedNm, Sort sort) {
        BigDecimal exact = BigDecimal.valueOf(typedNm.doubleValue() / sort.factor)
                .setScale(Math.max(1, typedNm.scale()), RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return exact.setScale(Math.max(0, exact.scale()), RoundingMode.UNNECESSARY);
    }

    private static Optional<Slip> swapped(Torque torque, BigDecimal typedNm) {
        String digits = typedNm.toPlainString();
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < digits.length(); i++) {
            if (Character.isDigit(digits.charAt(i))) {
                places.add(i);
            }
        }
        for (int i = 0; i + 1 < places.size(); i++) {
            var other = new StringBuilder(digits);
            other.setCharAt(places.get(i), digits.charAt(places.get(i + 1)));
            other.setCharAt(places.get(i + 1), digits.charAt(places.get(i)));
            var value = new BigDecimal(other.toString());
            if (torque.limitsNm().holds(value)) {
                return Optional.of(new Slip(Sort.DIGITS_SWAPPED, typedNm, value));
            }
        }
        return Optional.empty();
    }
}

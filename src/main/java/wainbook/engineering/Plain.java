package wainbook.engineering;

import java.math.BigDecimal;
import java.math.MathContext;

/** How numbers are written, and to how many digits they are compared. */
public final class Plain {

    private static final int COMPARED_DIGITS = 12;
    private static final int READ_DIGITS = 6;
    private static final int LONGEST_PLAIN = 18;

    private Plain() {}

    /**
     * The value as limits see it, in 12 significant digits: 0.02 / 0.2 is 0.1, though the doubles make it a little less.
     * The one place where figures are rounded before they are compared.
     */
    public static double compared(double value) {
        return Double.isFinite(value) ? rounded(value, COMPARED_DIGITS).doubleValue() : value;
    }

    public static String text(Object value) {
        return value instanceof Double number && Double.isFinite(number)
                ? text(rounded(number, COMPARED_DIGITS))
                : String.valueOf(value);
    }

    /** In as few digits as read well, but never so few that the value looks like a limit that it is not. */
    public static String beside(double limit, double value) {
        if (!Double.isFinite(limit) || !Double.isFinite(value)) {
            return String.valueOf(value);
        }
        int digits = READ_DIGITS;
        while (digits < COMPARED_DIGITS && rounded(value, digits).compareTo(rounded(limit, digits)) == 0) {
            digits++;
        }
        return text(rounded(value, digits));
    }

    private static BigDecimal rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits));
    }

    private static String text(BigDecimal value) {
        BigDecimal shortest = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        String plain = shortest.toPlainString();
        return plain.length() <= LONGEST_PLAIN ? plain : shortest.toString();
    }
}

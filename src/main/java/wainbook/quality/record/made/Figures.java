package wainbook.quality.record.made;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures as a question shows them: to three significant digits. */
public final class Figures {

    private Figures() {}

    public static String of(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    public static String percent(double share) {
        return String.valueOf(Math.round(100 * share));
    }
}

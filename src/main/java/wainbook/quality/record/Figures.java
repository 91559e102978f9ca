package wainbook.quality.record;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures as a question shows them: to three significant digits. */
final class Figures {

    private Figures() {}

    static String of(double value) {
        return new BigDecimal(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toPlainString();
    }

    static String percent(double share) {
        return String.valueOf(Math.round(100 * share));
    }
}

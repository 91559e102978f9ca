package wainbook.works.instruments.daily;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import wainbook.works.WorksSaying.ToolChecked;

/**
 * Three pulls of a torque tool on a tester near the day's work. error = mean of (set − tester) / tester; within half of what is
 * permitted and the tester's own uncertainty the tool is good, beyond all that is permitted it is withdrawn, between the two it
 * is looked at. A works rule, no source; what is permitted where no calibration says it: 4 % above 10 N·m, 6 % up to it
 * (ISO 6789-1 for setting tools with a scale, as a maker's manual tells it).
 *
 * @param target torque set on the tool, in N·m
 * @param references what the tester read, in N·m, each above zero
 * @param permittedPercent permitted deviation of the tool's last calibration
 * @param testerPercent expanded uncertainty of the tester
 */
record DailyCheck(
        BigDecimal target,
        List<BigDecimal> references,
        Optional<BigDecimal> permittedPercent,
        BigDecimal testerPercent) {

    static final int PULLS = 3;

    private static final BigDecimal SMALL_NM = BigDecimal.TEN;
    private static final BigDecimal HUNDRED = new BigDecimal(100);
    private static final int DECIMALS = 6;

    ToolChecked by(String tester) {
        BigDecimal error = errorPercent();
        return new ToolChecked(
                tester,
                target,
                references,
                error,
                limitPercent(),
                actionPercent(),
                error.abs().compareTo(limitPercent()) <= 0);
    }

    /** Whether the tool is beyond what is permitted: it is not to be used any more. */
    static boolean failed(ToolChecked said) {
        return said.errorPercent().abs().compareTo(said.actionPercent()) > 0;
    }

    private BigDecimal errorPercent() {
        return references.stream()
                .map(read -> target.subtract(read).multiply(HUNDRED).divide(read, MathContext.DECIMAL64))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(references.size()), DECIMALS, RoundingMode.HALF_EVEN);
    }

    private BigDecimal limitPercent() {
        BigDecimal limit = actionPercent().divide(BigDecimal.valueOf(2)).add(testerPercent);
        return limit.min(actionPercent());
    }

    private BigDecimal actionPercent() {
        return permittedPercent.orElseGet(
                () -> target.compareTo(SMALL_NM) > 0 ? BigDecimal.valueOf(4) : BigDecimal.valueOf(6));
    }
}

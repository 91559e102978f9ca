package wainbook.process.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import wainbook.engineering.Plain;
import wainbook.engineering.Verdict;
import wainbook.engineering.tightening.Tightening;
import wainbook.process.joint.Joint.Window;

/**
 * Limits of a torque drawn in by the uncertainty of the tool that reads it, by the calculation that everybody can open.
 *
 * @param toolPercent W′, the tool's relative expanded uncertainty interval (k = 2, mean error included), in percent
 * @param decisionFactor the share of it that is kept clear of each limit
 */
public record GuardedLimits(Window limitsNm, BigDecimal toolPercent, BigDecimal decisionFactor) {

    private static final int SHOWN_DECIMALS = 2;

    /** The lowest torque that passes, in N·m. */
    public double lowerNm() {
        return results().acceptLowerNm();
    }

    /** The highest torque that passes, in N·m; below the lowest where the tool is too coarse to pass anything. */
    public double upperNm() {
        return results().acceptUpperNm();
    }

    /** The lower end as it is read beside a field, rounded inwards, so that a reading of it passes. */
    public String lowerShown() {
        return shown(lowerNm(), RoundingMode.CEILING);
    }

    public String upperShown() {
        return shown(upperNm(), RoundingMode.FLOOR);
    }

    public boolean passesNothing() {
        return lowerNm() > upperNm();
    }

    /** Undecided is inside the limits, but not by enough to be shown to conform; it never passes. */
    public Verdict verdict(BigDecimal readingNm) {
        return new Tightening()
                .of(inputs(readingNm))
                .fold(working -> working.verdict(), faults -> Verdict.FAIL, impossible -> Verdict.FAIL);
    }

    /** Where the calculation stands open with these figures. */
    public String calculation(BigDecimal readingNm) {
        return "/calculations/tightening?readingNm=" + readingNm.toPlainString()
                + "&lowerNm=" + limitsNm.lower().toPlainString()
                + "&upperNm=" + limitsNm.upper().toPlainString()
                + "&intervalPercent=" + toolPercent.toPlainString()
                + "&decisionFactor=" + decisionFactor.toPlainString();
    }

    private Tightening.Results results() {
        return new Tightening()
                .of(inputs(limitsNm.lower()))
                .fold(
                        working -> working.results(),
                        faults -> {
                            throw new IllegalStateException("a joint's limits are no limits: " + faults);
                        },
                        impossible -> {
                            throw new IllegalStateException("a joint's limits are impossible: " + impossible);
                        });
    }

    private Tightening.Inputs inputs(BigDecimal readingNm) {
        return new Tightening.Inputs(
                readingNm.doubleValue(),
                limitsNm.lower().doubleValue(),
                limitsNm.upper().doubleValue(),
                toolPercent.doubleValue(),
                decisionFactor.doubleValue());
    }

    private static String shown(double nm, RoundingMode inwards) {
        BigDecimal rounded = BigDecimal.valueOf(Plain.compared(nm))
                .setScale(SHOWN_DECIMALS, inwards)
                .stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }
}

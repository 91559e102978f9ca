package wainbook.process.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import wainbook.engineering.Plain;
import wainbook.engineering.tightening.Tightening;
import wainbook.process.Joint;
import wainbook.process.JointClass;

/**
 * What a joint can be accepted at with one tool: its limits drawn in by the tool's uncertainty, as far as the joint class
 * asks ({@link Tightening}).
 *
 * <p>Whether the tool can serve is a works rule on top, the classical ratio of uncertainty to tolerance: W′·T0 may be a third
 * of half the tolerance at most, and is wanted at a fifth. A setting tool gives no reading, so the value it is set to must lie
 * inside the limits with all of its uncertainty.
 *
 * @param toolPercent W′, the tool's relative expanded uncertainty interval (k = 2, mean error included), in percent
 */
public record Acceptance(Joint joint, BigDecimal toolPercent) {

    /** The share of half the tolerance that a tool's uncertainty may take. */
    public static final double NEEDED = 1.0 / 3;

    /** The share that it should take. */
    public static final double WANTED = 1.0 / 5;

    private static final int SHOWN_DECIMALS = 2;

    /** The lowest torque that passes, in N·m. */
    public double lowerNm() {
        return limits().acceptLowerNm();
    }

    /** The highest torque that passes, in N·m; below the lowest where the tool is too coarse to pass anything. */
    public double upperNm() {
        return limits().acceptUpperNm();
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

    /** W′·T0 by half the tolerance. */
    public double ratio() {
        return Plain.compared(toolPercent.doubleValue() / 100 * targetNm() / halfNm());
    }

    public boolean ratioAsWanted() {
        return ratio() <= Plain.compared(WANTED);
    }

    /** Whether a joint of this class may be tightened with the tool. */
    public boolean serves() {
        return mayServe(joint) && toolPercent.doubleValue() <= Plain.compared(mostPercent(joint));
    }

    /** A click is no reading, and class A wants one for every fastener. */
    static boolean mayServe(Joint joint) {
        return joint.jointClass() != JointClass.A || ToolSort.of(joint.toolKind()) == ToolSort.INDICATING;
    }

    /** The largest W′, in percent, with which a tool can serve the joint; infinite where its class asks for none. */
    static double mostPercent(Joint joint) {
        if (joint.jointClass() == JointClass.C) {
            return Double.POSITIVE_INFINITY;
        }
        double targetNm = joint.torque().targetNm().doubleValue();
        double lowerNm = joint.torque().limitsNm().lower().doubleValue();
        double upperNm = joint.torque().limitsNm().upper().doubleValue();
        if (ToolSort.of(joint.toolKind()) == ToolSort.SETTING) {
            return 100 * Math.min(1 - lowerNm / targetNm, upperNm / targetNm - 1);
        }
        double byRatio = NEEDED * (upperNm - lowerNm) / 2 / targetNm;
        double targetPasses = Math.min(targetNm / lowerNm - 1, 1 - targetNm / upperNm)
                / joint.jointClass().decisionFactor().doubleValue();
        return 100 * Math.min(byRatio, targetPasses);
    }

    /** The smallest tolerance, in percent to either side of the target, that the tool could serve in this class. */
    double servesFromPercent() {
        return ToolSort.of(joint.toolKind()) == ToolSort.SETTING
                ? toolPercent.doubleValue()
                : toolPercent.doubleValue() / NEEDED;
    }

    private double targetNm() {
        return joint.torque().targetNm().doubleValue();
    }

    private double halfNm() {
        Joint.Window limitsNm = joint.torque().limitsNm();
        return (limitsNm.upper().doubleValue() - limitsNm.lower().doubleValue()) / 2;
    }

    private Tightening.Results limits() {
        return new Tightening()
                .of(inputs(joint.torque().targetNm()))
                .fold(
                        working -> working.results(),
                        faults -> {
                            throw new IllegalStateException("a joint's limits are no limits: " + faults);
                        },
                        impossible -> {
                            throw new IllegalStateException("a joint's limits are impossible: " + impossible);
                        });
    }

    /** What the calculation is asked for one reading. */
    public Tightening.Inputs inputs(BigDecimal readingNm) {
        return new Tightening.Inputs(
                readingNm.doubleValue(),
                joint.torque().limitsNm().lower().doubleValue(),
                joint.torque().limitsNm().upper().doubleValue(),
                toolPercent.doubleValue(),
                joint.jointClass().decisionFactor().doubleValue());
    }

    private static String shown(double nm, RoundingMode inwards) {
        BigDecimal rounded = BigDecimal.valueOf(Plain.compared(nm))
                .setScale(SHOWN_DECIMALS, inwards)
                .stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }
}

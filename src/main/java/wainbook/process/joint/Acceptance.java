package wainbook.process.joint;

import java.math.BigDecimal;
import wainbook.engineering.Plain;

/**
 * What a joint can be accepted at with one tool: its limits drawn in by the tool's uncertainty, as far as the joint class
 * asks.
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

    /** The joint's limits, drawn in. */
    public GuardedLimits guarded() {
        return new GuardedLimits(
                joint.torque().limitsNm(), toolPercent, joint.jointClass().decisionFactor());
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
}

package wainbook.station;

import java.math.BigDecimal;
import wainbook.process.Joint;

/** Between which readings a joint's torque is accepted with a given tool. */
final class TorqueLimits {

    private TorqueLimits() {}

    static Joint.Window of(Joint joint, BigDecimal toolPercent) {
        BigDecimal drawnIn =
                joint.jointClass().decisionFactor().multiply(toolPercent).movePointLeft(2);
        Joint.Window limits = joint.torque().limitsNm();
        return new Joint.Window(
                limits.lower().multiply(BigDecimal.ONE.add(drawnIn)),
                limits.upper().multiply(BigDecimal.ONE.subtract(drawnIn)));
    }
}

package wainbook.process.joint;

import java.math.BigDecimal;

/**
 * How a tightened joint is checked again. The way follows the joint; no standard says how (common practice, no source). It is
 * another thing than the tightening, with limits of its own.
 */
public enum CheckWay {
    /** A marked electrical joint: by its mark, then at about 80 % of its torque, where nothing may move. */
    BY_MARK,
    /** The torque at which each fastener moves again in the tightening direction lies in limits found by trials. */
    RESIDUAL,
    /** No fastener moves before 80 % of its torque; where it first moves is kept. */
    FIRST_MOTION;

    private static final BigDecimal CHECK_SHARE = new BigDecimal("0.8");
    private static final BigDecimal LEAST_SHARE = new BigDecimal("0.75");
    private static final BigDecimal MOST_SHARE = new BigDecimal("0.85");

    /** What was found at one fastener of a marked joint. */
    public enum Found {
        HELD,
        MARK_DISPLACED,
        MOVED
    }

    public static CheckWay of(Joint joint) {
        if (joint.highVoltage()) {
            return BY_MARK;
        }
        return joint.residualNm().isPresent() ? RESIDUAL : FIRST_MOTION;
    }

    /** At about which torque it is checked: 80 % of the target. */
    public static BigDecimal checkNm(Joint joint) {
        return joint.torque().targetNm().multiply(CHECK_SHARE).stripTrailingZeros();
    }

    /** Below this a check says little: 75 % of the target, a works rule. */
    public static BigDecimal leastCheckNm(Joint joint) {
        return joint.torque().targetNm().multiply(LEAST_SHARE).stripTrailingZeros();
    }

    /** Above this a marked joint would be turned instead of checked: 85 % of the target, a works rule. */
    public static BigDecimal mostCheckNm(Joint joint) {
        return joint.torque().targetNm().multiply(MOST_SHARE).stripTrailingZeros();
    }
}

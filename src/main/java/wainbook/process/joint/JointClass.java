package wainbook.process.joint;

import java.math.BigDecimal;

/**
 * What a failure of a joint does, and what is asked for that reason. The three classes are those of VDI/VDE 2862; what each
 * asks here is a works rule in their spirit.
 */
public enum JointClass {
    /** Someone may be hurt or killed. */
    A("1"),
    /** The vehicle stops, leaks or loses a function. */
    B("0.8224"),
    /** All the rest. */
    C("0");

    private final BigDecimal decisionFactor;

    JointClass(String decisionFactor) {
        this.decisionFactor = new BigDecimal(decisionFactor);
    }

    /**
     * The share r of the instrument's expanded uncertainty that is kept clear of each limit: at 1 a wrong acceptance has a
     * chance below 2.5 %, at 0.8224 one of 5 % at most, at 0 acceptance is simple.
     */
    public BigDecimal decisionFactor() {
        return decisionFactor;
    }

    /** Whether one confirmation may stand for the whole joint. */
    public boolean mayBeTicked() {
        return this == C;
    }

    /** Whether 'clicked at the set value' may stand for a reading. */
    public boolean clickIsEnough() {
        return this != A;
    }

    /** Whether the fasteners' order is a bar and not a question. */
    public boolean orderBinds() {
        return this == A;
    }

    public boolean mayBeCarriedOver() {
        return this != A;
    }

    /** Whether an angle in its window, or a second person's check, has to stand beside the torque. */
    public boolean secondEvidence() {
        return this == A;
    }
}

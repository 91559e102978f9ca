package wainbook.process;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A bolted joint as it is to be tightened. Its class belongs to its revision: an entry keeps the class it was made under.
 *
 * @param bolts fasteners in the joint
 * @param order how they lie, from which their order follows
 * @param toolKind the kind of instrument that tightens it
 * @param tries how often a bad result may be put right
 * @param thread size, property class and lubrication state, since all three change what a torque means
 * @param highVoltage whether it carries high voltage or bonds a part that does
 * @param place where on the vehicle
 * @param source where its values come from
 */
public record Joint(
        String code,
        String title,
        JointClass jointClass,
        int bolts,
        Order order,
        Torque torque,
        Optional<Angle> angle,
        String toolKind,
        int tries,
        Optional<String> thread,
        boolean highVoltage,
        Optional<String> place,
        Optional<String> source) {

    public Joint {
        Code.checked("a joint", code);
        Code.titled("a joint", title);
        Code.checked("a kind of tool", toolKind);
        if (bolts < 1 || bolts > 200) {
            throw new IllegalArgumentException("a joint has 1 to 200 fasteners, not " + bolts);
        }
        if (tries < 1 || tries > 20) {
            throw new IllegalArgumentException("a fastener may be tried 1 to 20 times, not " + tries);
        }
    }

    /** How the fasteners lie. */
    public enum Order {
        /** Round a circle, numbered clockwise: tightened crosswise. */
        CIRCLE,
        /** In the order of the list. */
        LIST
    }

    /** Target and limits of the tightening torque, in newton metres. */
    public record Torque(BigDecimal targetNm, Window limitsNm) {
        public Torque {
            if (limitsNm.lower().signum() <= 0) {
                throw new IllegalArgumentException("a torque's lower limit is above zero");
            }
            if (!limitsNm.holds(targetNm)) {
                throw new IllegalArgumentException(
                        "the target " + targetNm + " N·m lies outside " + limitsNm.lower() + " to " + limitsNm.upper());
            }
        }
    }

    /** The window of the angle from snug, in degrees. */
    public record Angle(Window degrees) {
        public Angle {
            if (degrees.lower().signum() < 0) {
                throw new IllegalArgumentException("an angle from snug is zero or more");
            }
        }
    }

    /** From lower to upper, both ends inside. */
    public record Window(BigDecimal lower, BigDecimal upper) {
        public Window {
            if (lower.compareTo(upper) >= 0) {
                throw new IllegalArgumentException("the lower limit " + lower + " is not below the upper " + upper);
            }
        }

        public boolean holds(BigDecimal value) {
            return value.compareTo(lower) >= 0 && value.compareTo(upper) <= 0;
        }
    }
}

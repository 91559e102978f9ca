package wainbook.process.joint;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.process.Code;

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
 * @param rows how many rows they lie in, or down one side of a frame; absent for a circle and a list
 * @param passes how the torque is raised, where that is not as usual for how they lie
 * @param residualNm limits of the torque at which a tightened fastener moves again; never those of the tightening
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
        Optional<String> source,
        Optional<Integer> rows,
        Optional<Passes> passes,
        Optional<Window> residualNm) {

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
        if (rows.isPresent() != order.liesInRows()) {
            throw new IllegalArgumentException("rows and frames say how many rows, a circle and a list say none");
        }
        if (!order.fits(bolts, rows.orElse(1))) {
            throw new IllegalArgumentException(
                    bolts + " fasteners do not lie in " + rows.orElse(1) + " rows of a " + order);
        }
    }

    /** How the fasteners lie. */
    public enum Order {
        /** Round a circle, numbered clockwise: tightened crosswise. */
        CIRCLE,
        /** In rows of equal length, numbered row by row: tightened from the middle outwards, crosswise. */
        ROWS,
        /** Round a rectangle, numbered clockwise from its first corner: tightened from the middle outwards, crosswise. */
        FRAME,
        /** In the order of the list. */
        LIST;

        public boolean liesInRows() {
            return this == ROWS || this == FRAME;
        }

        /** Whether so many fasteners can lie like this; {@code rows} counts for rows and frames only. */
        public boolean fits(int bolts, int rows) {
            return switch (this) {
                case CIRCLE, LIST -> true;
                case ROWS -> rows >= 1 && bolts % rows == 0;
                case FRAME -> rows >= 2 && bolts - 2 * (rows - 2) >= 4 && bolts % 2 == 0;
            };
        }
    }

    /**
     * How the torque is raised: every fastener to a share of the target, then every one to the next.
     *
     * @param percent of the target, pass by pass; the last is the target, and the readings are those of the last
     */
    public record Passes(List<Integer> percent) {

        /** A common practice for flanges: three steps crosswise, then once more round at the target (works rule). */
        public static final Passes USUAL = new Passes(List.of(30, 70, 100, 100));

        public static final Passes ONE = new Passes(List.of(100));

        public Passes {
            percent = List.copyOf(percent);
            int former = 1;
            for (int share : percent) {
                if (share < former || share > 100) {
                    throw new IllegalArgumentException("passes rise from 1 to 100 %, not " + percent);
                }
                former = share;
            }
            if (percent.isEmpty() || percent.size() > 8 || former != 100) {
                throw new IllegalArgumentException("the last of one to eight passes is 100 %, not " + percent);
            }
        }
    }

    /**
     * Crosswise joints are raised in steps where nothing else is said; a list is tightened once through, and so is a joint
     * whose angle counts from snug, since an earlier pass would have used the angle up.
     */
    public Passes passesInForce() {
        boolean once = order == Order.LIST || bolts <= 2 || angle.isPresent();
        return passes.orElse(once ? Passes.ONE : Passes.USUAL);
    }

    /** The same joint with another kind of tool. */
    public Joint tightenedWith(String otherKind) {
        return new Joint(
                code,
                title,
                jointClass,
                bolts,
                order,
                torque,
                angle,
                otherKind,
                tries,
                thread,
                highVoltage,
                place,
                source,
                rows,
                passes,
                residualNm);
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

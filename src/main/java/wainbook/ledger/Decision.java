package wainbook.ledger;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;

/**
 * What comes of a request: lines to append, or reasons against it, never both. The first line takes the request's id.
 */
public record Decision(List<Line> lines, List<Reason> reasons) {

    /** One entry to be. */
    public record Line(Subject subject, Saying saying) {}

    public Decision {
        lines = List.copyOf(lines);
        reasons = List.copyOf(reasons);
        if (lines.isEmpty() == reasons.isEmpty()) {
            throw new IllegalArgumentException("a decision has either lines or reasons");
        }
    }

    public static Decision refuse(List<Reason> reasons) {
        return new Decision(List.of(), reasons);
    }

    public static Decision refuse(Reason... reasons) {
        return refuse(List.of(reasons));
    }

    public static Decision say(Subject subject, Saying saying) {
        return new Decision(List.of(new Line(subject, saying)), List.of());
    }

    public Decision andSay(Subject subject, Saying saying) {
        var longer = new ArrayList<>(lines);
        longer.add(new Line(subject, saying));
        return new Decision(longer, reasons);
    }
}

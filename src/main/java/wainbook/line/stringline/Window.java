package wainbook.line.stringline;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.Shifts.Span;

/** From when to when a picture goes. */
record Window(Instant from, Instant to) {

    private static final Duration DAY = Duration.ofDays(1);
    private static final Duration SEARCHED = Duration.ofDays(31);
    private static final int MOST_DAYS = 31;

    /** The last two shifts, the one that runs, and the next. */
    static Window shortly(Shifts shifts, Instant now) {
        return new Window(
                back(shifts, now, 2),
                shifts.nextBegin(now).flatMap(shifts::running).map(Span::to).orElse(now.plus(DAY)));
    }

    /** The last shift, the one that runs, and what is to come until this time. */
    static Window until(Shifts shifts, Instant now, Instant end) {
        Window next = shortly(shifts, now);
        Instant most = now.plus(Duration.ofDays(MOST_DAYS));
        Instant to = end.isAfter(most) ? most : end;
        return new Window(back(shifts, now, 1), to.isAfter(next.to()) ? to : next.to());
    }

    private static Instant back(Shifts shifts, Instant now, int before) {
        var begun = new ArrayList<Instant>();
        List<Span> worked = new ArrayList<>(shifts.working(now.minus(SEARCHED), now));
        Collections.reverse(worked);
        for (Span span : worked) {
            Optional<Instant> begins = shifts.running(span.from()).map(Span::from);
            begins.filter(from -> !begun.contains(from)).ifPresent(begun::add);
        }
        int wanted = before + (shifts.running(now).isPresent() ? 1 : 0);
        return begun.isEmpty() ? now.minus(DAY) : begun.get(Math.min(wanted, begun.size()) - 1);
    }
}

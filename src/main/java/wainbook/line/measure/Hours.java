package wainbook.line.measure;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import wainbook.engineering.flow.status.StationPast.Span;
import wainbook.works.shift.Shifts;

/** Working time as a clock that stands off shift and in breaks, in whole milliseconds, so that parts add up to the whole. */
final class Hours {

    private final List<Span> spans;
    private final long[] from;
    private final long[] before;

    private Hours(List<Span> spans) {
        this.spans = spans;
        this.from = spans.stream().mapToLong(Span::fromMillis).toArray();
        this.before = new long[spans.size() + 1];
        for (int i = 0; i < spans.size(); i++) {
            before[i + 1] = before[i] + spans.get(i).toMillis() - from[i];
        }
    }

    static Hours of(Shifts shifts, Instant from, Instant to) {
        return new Hours(shifts.working(from, to).stream()
                .map(span -> new Span(span.from().toEpochMilli(), span.to().toEpochMilli()))
                .filter(span -> span.fromMillis() < span.toMillis())
                .toList());
    }

    List<Span> spans() {
        return spans;
    }

    /** How far the clock has run at an instant, since its own beginning. */
    long at(Instant instant) {
        long millis = instant.toEpochMilli();
        int found = Arrays.binarySearch(from, millis);
        int index = found >= 0 ? found : -found - 2;
        if (index < 0) {
            return 0;
        }
        return before[index] + Math.min(millis, spans.get(index).toMillis()) - from[index];
    }

    long between(Instant begin, Instant end) {
        return at(end) - at(begin);
    }
}

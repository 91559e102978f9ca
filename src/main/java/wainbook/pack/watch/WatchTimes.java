package wainbook.pack.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * When a damaged pack is read: at 0, 15, 30 and 60 minutes, then every hour for 24 hours at least. An alarm begins the watch
 * anew. Common practice, no source. A reading counts for a time up to five minutes before and after it (works rule).
 *
 * @param from when the watch began: set aside, or the last alarm
 * @param readAt when the pack was read, oldest first
 */
public record WatchTimes(Instant from, List<Instant> readAt) {

    public static final int LEAST_HOURS = 24;
    public static final Duration TOLERANCE = Duration.ofMinutes(5);

    /** So many missed readings a person who judges may still answer for. Works rule. */
    public static final int MOST_MISSED = 2;

    private static final List<Integer> FIRST_MIN = List.of(0, 15, 30, 60);

    public WatchTimes {
        readAt = List.copyOf(readAt);
    }

    /** Every time of the watch, the last one {@link #LEAST_HOURS} after its beginning. */
    public List<Instant> planned() {
        return Stream.concat(
                        FIRST_MIN.stream().map(Duration::ofMinutes),
                        IntStream.rangeClosed(2, LEAST_HOURS).mapToObj(Duration::ofHours))
                .map(from::plus)
                .toList();
    }

    /** When its last reading is. */
    public Instant over() {
        return from.plus(Duration.ofHours(LEAST_HOURS));
    }

    /** The next time to read; empty once the last one was read. */
    public Optional<Instant> next() {
        return planned().stream().filter(time -> !passed(time)).findFirst();
    }

    /** From when on nobody can say that the next reading is on time. */
    public boolean late(Instant now) {
        return next().filter(time -> now.isAfter(time.plus(TOLERANCE))).isPresent();
    }

    public boolean complete() {
        return next().isEmpty();
    }

    /** Times that went by, within the tolerance, without a reading. */
    public List<Instant> missed(Instant now) {
        var missed = new ArrayList<Instant>();
        for (Instant time : planned()) {
            boolean over = now.isAfter(time.plus(TOLERANCE));
            if (over && readAt.stream().noneMatch(read -> onTime(read, time))) {
                missed.add(time);
            }
        }
        return List.copyOf(missed);
    }

    private static boolean onTime(Instant read, Instant time) {
        return !read.isBefore(time.minus(TOLERANCE)) && !read.isAfter(time.plus(TOLERANCE));
    }

    /** Read then, or later: what was missed is not made up for by looking back. */
    private boolean passed(Instant time) {
        return readAt.stream().anyMatch(read -> !read.isBefore(time.minus(TOLERANCE)));
    }
}

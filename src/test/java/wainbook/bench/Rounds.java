package wainbook.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wainbook.bench.Comparison.Go;

/**
 * How often candidate and baseline take turns. They do so one go at a time, so that whatever else the machine is busy with
 * hits both alike.
 *
 * @param warmUp goes by before anything counts
 * @param span after which no further round begins, once there were enough
 */
record Rounds(Duration warmUp, Duration span, int least, int most) {

    static final Rounds MANY = new Rounds(Duration.ofSeconds(5), Duration.ofSeconds(10), 9, 300);

    /** Enough to see that a benchmark still runs. */
    static final Rounds ONE = new Rounds(Duration.ZERO, Duration.ZERO, 1, 1);

    /** Where every result goes, or the compiler may leave out what nobody asks for. */
    static volatile Object result;

    Figures of(Comparison comparison) throws Exception {
        for (long begun = System.nanoTime(); since(begun).compareTo(warmUp) < 0; ) {
            timed(comparison.candidate());
            timed(comparison.baseline());
        }
        List<Figures.Round> rounds = new ArrayList<>();
        for (long begun = System.nanoTime(); wanted(rounds.size(), begun); ) {
            rounds.add(round(comparison, rounds.size() % 2 == 0));
        }
        return new Figures(comparison, rounds);
    }

    private boolean wanted(int taken, long begun) {
        return taken < least || (taken < most && since(begun).compareTo(span) < 0);
    }

    private static Figures.Round round(Comparison comparison, boolean candidateFirst) throws Exception {
        if (candidateFirst) {
            long candidate = timed(comparison.candidate());
            return new Figures.Round(candidate, timed(comparison.baseline()));
        }
        long baseline = timed(comparison.baseline());
        return new Figures.Round(timed(comparison.candidate()), baseline);
    }

    private static long timed(Go go) throws Exception {
        var ready = go.ready();
        long begun = System.nanoTime();
        result = ready.call();
        return System.nanoTime() - begun;
    }

    private static Duration since(long nanoTime) {
        return Duration.ofNanos(System.nanoTime() - nanoTime);
    }
}

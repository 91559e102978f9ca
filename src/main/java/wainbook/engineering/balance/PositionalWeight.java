package wainbook.engineering.balance;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Ranked positional weights (W. B. Helgeson, D. P. Birnie 1961, from memory): station by station, of the tasks that may follow
 * and still fit the one whose own time with all that waits for it is greatest; among equals the first of the list. Quick, and
 * never below the best.
 */
final class PositionalWeight {

    private final Ticks ticks;
    private final Precedence precedence;
    private final List<Integer> ranked;

    PositionalWeight(Ticks ticks, Precedence precedence) {
        this.ticks = ticks;
        this.precedence = precedence;
        long[] weight = IntStream.range(0, ticks.size())
                .mapToLong(task -> Precedence.sum(ticks.rows()[0], task, precedence.behind(task)))
                .toArray();
        this.ranked = IntStream.range(0, ticks.size())
                .boxed()
                .sorted(Comparator.comparingLong((Integer task) -> -weight[task]))
                .toList();
    }

    /** Each task's station, from 0; empty if a task is longer than the cycle. */
    Optional<int[]> stations(long cycle) {
        int[] station = new int[ticks.size()];
        var done = new BitSet(ticks.size());
        for (int place = 0; done.cardinality() < ticks.size(); place++) {
            if (!fill(place, cycle, station, done)) {
                return Optional.empty();
            }
        }
        return Optional.of(station);
    }

    private boolean fill(int place, long cycle, int[] station, BitSet done) {
        long[] left = LongStream.of(ticks.times()).map(times -> times * cycle).toArray();
        boolean any = false;
        for (Optional<Integer> next = next(left, done); next.isPresent(); next = next(left, done)) {
            int task = next.get();
            ticks.rowNumbers().forEach(row -> left[row] -= ticks.rows()[row][task]);
            station[task] = place;
            done.set(task);
            any = true;
        }
        return any;
    }

    private Optional<Integer> next(long[] left, BitSet done) {
        return ranked.stream()
                .filter(task -> !done.get(task) && allDone(precedence.before(task), done))
                .filter(task -> ticks.rowNumbers().stream().allMatch(row -> ticks.rows()[row][task] <= left[row]))
                .findFirst();
    }

    private static boolean allDone(BitSet before, BitSet done) {
        return before.stream().allMatch(done::get);
    }

    static int count(int[] station) {
        return IntStream.of(station).max().orElse(0) + 1;
    }
}

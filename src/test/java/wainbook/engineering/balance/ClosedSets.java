package wainbook.engineering.balance;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A second, exact way for small graphs, which shares nothing with the first but the tasks: over all sets that are closed under
 * predecessors it keeps the least number of stations and then the least load in the last one; a task is added where it fits, else
 * at a new station.
 */
final class ClosedSets {

    private static final long NEVER = Long.MAX_VALUE;
    private static final long STATION = 1L << 32;

    private final long[] time;
    private final int[] before;

    ClosedSets(List<Task> tasks) {
        this.time = tasks.stream()
                .mapToLong(task -> Math.round(task.minutes().get(0)))
                .toArray();
        List<String> ids = tasks.stream().map(Task::id).toList();
        this.before = tasks.stream()
                .mapToInt(task -> task.after().stream()
                        .mapToInt(id -> 1 << ids.indexOf(id))
                        .reduce(0, (one, other) -> one | other))
                .toArray();
    }

    int fewest(long cycle) {
        long[] least = new long[1 << time.length];
        Arrays.fill(least, NEVER);
        least[0] = cycle;
        for (int set = 0; set < least.length; set++) {
            for (int task = 0; task < time.length && least[set] != NEVER; task++) {
                if ((set & 1 << task) == 0 && (set & before[task]) == before[task]) {
                    long load = least[set] % STATION;
                    long next = load + time[task] <= cycle
                            ? least[set] + time[task]
                            : least[set] - load + STATION + time[task];
                    least[set | 1 << task] = Math.min(least[set | 1 << task], next);
                }
            }
        }
        return (int) (least[least.length - 1] / STATION);
    }

    long shortest(int stations) {
        long longest = Arrays.stream(time).max().orElseThrow();
        return IntStream.rangeClosed((int) longest, (int) Arrays.stream(time).sum())
                .filter(cycle -> fewest(cycle) <= stations)
                .findFirst()
                .orElseThrow();
    }
}

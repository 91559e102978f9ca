package wainbook.engineering.balance;

import java.util.List;
import java.util.stream.IntStream;

/**
 * At which of m stations a task can be at all: from ⌈(own time + all before) / c⌉ to m + 1 − ⌈(own time + all behind) / c⌉, and
 * where the rules let it. An empty window proves that there is no balance.
 */
final class Windows {

    private final List<List<Integer>> windows;

    Windows(Work work, Ticks ticks, Precedence precedence, int stations, long cycle) {
        this.windows = IntStream.range(0, ticks.size())
                .mapToObj(task -> IntStream.rangeClosed(
                                first(ticks, precedence, task, cycle, work.mostCapacity()),
                                last(ticks, precedence, task, cycle, work.mostCapacity(), stations))
                        .filter(station -> allowed(work, work.tasks().get(task), station))
                        .boxed()
                        .toList())
                .toList();
    }

    private static int first(Ticks ticks, Precedence precedence, int task, long cycle, int capacity) {
        return (int) ticks.rowNumbers().stream()
                .mapToLong(row -> Bounds.up(
                        Precedence.sum(ticks.rows()[row], task, precedence.before(task)),
                        Math.max(1, ticks.times()[row] * cycle * capacity)))
                .map(earliest -> Math.max(0, earliest - 1))
                .max()
                .orElse(0);
    }

    private static int last(Ticks ticks, Precedence precedence, int task, long cycle, int capacity, int stations) {
        return (int) ticks.rowNumbers().stream()
                .mapToLong(row -> stations
                        - Math.max(
                                1,
                                Bounds.up(
                                        Precedence.sum(ticks.rows()[row], task, precedence.behind(task)),
                                        Math.max(1, ticks.times()[row] * cycle * capacity))))
                .min()
                .orElse(stations - 1L);
    }

    private static boolean allowed(Work work, Task task, int station) {
        return task.persons() <= work.persons(station)
                && work.rules().stream()
                        .filter(Rule.Only.class::isInstance)
                        .map(Rule.Only.class::cast)
                        .filter(only -> only.tasks().contains(task.id()))
                        .allMatch(only -> only.stations().contains(station + 1));
    }

    /** Stations from 0. */
    List<Integer> of(int task) {
        return windows.get(task);
    }

    boolean none() {
        return windows.stream().anyMatch(List::isEmpty);
    }

    int size() {
        return windows.size();
    }
}

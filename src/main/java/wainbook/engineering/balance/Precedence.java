package wainbook.engineering.balance;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What comes before what, by the tasks' places in their list. */
final class Precedence {

    /** An arc: the first is done before the other. */
    record Arc(int first, int then) {}

    private final List<Arc> arcs;
    private final List<Integer> order;
    private final BitSet[] before;
    private final BitSet[] behind;

    private Precedence(int size, List<Arc> arcs, List<Integer> order) {
        this.arcs = arcs;
        this.order = order;
        this.before = sets(size);
        this.behind = sets(size);
        order.forEach(task -> arcs.stream().filter(arc -> arc.then() == task).forEach(arc -> {
            before[task].or(before[arc.first()]);
            before[task].set(arc.first());
        }));
        for (int task = 0; task < size; task++) {
            int one = task;
            before[task].stream().forEach(first -> behind[first].set(one));
        }
    }

    /** Empty if the tasks wait for each other in a circle. Ids that are not in the list are passed over. */
    static Optional<Precedence> of(List<Task> tasks) {
        Map<String, Integer> places = places(tasks);
        List<Arc> arcs = new ArrayList<>();
        for (int task = 0; task < tasks.size(); task++) {
            int then = task;
            tasks.get(task).after().stream()
                    .distinct()
                    .filter(places::containsKey)
                    .forEach(id -> arcs.add(new Arc(places.get(id), then)));
        }
        List<Integer> order = order(tasks.size(), arcs);
        return order.size() == tasks.size()
                ? Optional.of(new Precedence(tasks.size(), List.copyOf(arcs), order))
                : Optional.empty();
    }

    /** Tasks that wait for each other, from one round to the same again; empty if there are none. */
    static List<String> circle(List<Task> tasks) {
        Map<String, Integer> places = places(tasks);
        Set<String> stuck =
                new LinkedHashSet<>(places.keySet().stream().sorted().toList());
        while (stuck.removeIf(id -> tasks.get(places.get(id)).after().stream().noneMatch(stuck::contains))) {}
        List<String> walked = new ArrayList<>();
        Optional<String> next = stuck.stream().findFirst();
        while (next.isPresent() && !walked.contains(next.get())) {
            walked.add(0, next.get());
            next = tasks.get(places.get(next.get())).after().stream()
                    .filter(stuck::contains)
                    .findFirst();
        }
        return next.map(again -> Stream.concat(Stream.of(again), walked.subList(0, walked.indexOf(again) + 1).stream())
                        .toList())
                .orElse(List.of());
    }

    static Map<String, Integer> places(List<Task> tasks) {
        Map<String, Integer> places = new HashMap<>();
        for (int task = 0; task < tasks.size(); task++) {
            places.put(tasks.get(task).id(), task);
        }
        return places;
    }

    private static List<Integer> order(int size, List<Arc> arcs) {
        int[] open = new int[size];
        List<List<Integer>> next = new ArrayList<>();
        for (int task = 0; task < size; task++) {
            next.add(new ArrayList<>());
        }
        arcs.forEach(arc -> {
            open[arc.then()]++;
            next.get(arc.first()).add(arc.then());
        });
        List<Integer> order = new ArrayList<>();
        for (int task = 0; task < size; task++) {
            if (open[task] == 0) {
                order.add(task);
            }
        }
        for (int done = 0; done < order.size(); done++) {
            for (int then : next.get(order.get(done))) {
                if (--open[then] == 0) {
                    order.add(then);
                }
            }
        }
        return List.copyOf(order);
    }

    private static BitSet[] sets(int size) {
        return Stream.generate(() -> new BitSet(size)).limit(size).toArray(BitSet[]::new);
    }

    List<Arc> arcs() {
        return arcs;
    }

    /** An order in which all can be done. */
    List<Integer> order() {
        return order;
    }

    /** All that has to be done before it, near and far. */
    BitSet before(int task) {
        return before[task];
    }

    /** All that waits for it, near and far. */
    BitSet behind(int task) {
        return behind[task];
    }

    /** The time of a task with all before it, or with all behind it. */
    static long sum(long[] time, int task, BitSet others) {
        return time[task] + others.stream().mapToLong(other -> time[other]).sum();
    }
}

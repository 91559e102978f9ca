package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Whereabouts;

/**
 * The vehicles that wait in front of a line, in groups of which each comes wholly before the next: within its group a vehicle may
 * change its place. An order is a list of them by their number in today's order, from 0.
 *
 * @param groups names in today's order; together those, and only those, that wait
 */
public record InFront(Line line, List<List<String>> groups) {

    public InFront {
        groups = groups.stream()
                .<List<String>>map(List::copyOf)
                .filter(group -> !group.isEmpty())
                .toList();
        List<String> waiting = line.vehicles().stream()
                .filter(InFront::waits)
                .map(Vehicle::name)
                .toList();
        List<String> grouped = groups.stream().flatMap(List::stream).toList();
        if (!waiting.equals(grouped)) {
            throw new IllegalArgumentException("in front of the line wait " + waiting + ", not " + grouped);
        }
    }

    private static boolean waits(Vehicle vehicle) {
        return vehicle.whereabouts() instanceof Whereabouts.Waiting;
    }

    /** In today's order. */
    public List<String> names() {
        return groups.stream().flatMap(List::stream).toList();
    }

    List<String> names(List<Integer> order) {
        List<String> names = names();
        return order.stream().map(names::get).toList();
    }

    List<Integer> today() {
        return IntStream.range(0, names().size()).boxed().toList();
    }

    /** In how many orders they could come; beyond 2^53 about so many. */
    public double orders() {
        return groups.stream()
                .mapToDouble(group ->
                        IntStream.rangeClosed(2, group.size()).asDoubleStream().reduce(1, (a, b) -> a * b))
                .reduce(1, (a, b) -> a * b);
    }

    /** First and last place of the group of this place. */
    int[] group(int place) {
        int first = 0;
        for (List<String> group : groups) {
            if (place < first + group.size()) {
                return new int[] {first, first + group.size() - 1};
            }
            first += group.size();
        }
        throw new IllegalArgumentException("only " + first + " wait in front of the line");
    }

    /** The line with those in front of it in this order; nothing else of it changes. */
    Line in(List<Integer> order) {
        List<Vehicle> waiting = line.vehicles().stream().filter(InFront::waits).toList();
        var next = order.iterator();
        return line.withVehicles(line.vehicles().stream()
                .map(one -> waits(one) ? waiting.get(next.next()) : one)
                .toList());
    }

    /** Pairs that come the other way round than today. */
    static int changes(List<Integer> order) {
        return IntStream.range(0, order.size())
                .map(at -> (int) IntStream.range(at + 1, order.size())
                        .filter(later -> order.get(later) < order.get(at))
                        .count())
                .sum();
    }

    /** Every order, today's first. */
    List<List<Integer>> all() {
        var found = new ArrayList<List<Integer>>();
        gather(new ArrayList<>(today()), 0, found);
        return found;
    }

    private void gather(List<Integer> order, int place, List<List<Integer>> found) {
        if (place == order.size()) {
            found.add(List.copyOf(order));
            return;
        }
        for (int other = place; other <= group(place)[1]; other++) {
            Collections.swap(order, place, other);
            gather(order, place + 1, found);
            Collections.swap(order, place, other);
        }
    }
}

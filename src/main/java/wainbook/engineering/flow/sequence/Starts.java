package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wainbook.engineering.flow.forecast.Lateness;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/**
 * Orders to search from: today's, by promise, and by critical ratio, which is working time to the promise by working time to the median
 * finish if the vehicle came first of its group. Those that are overdue come first, by slack.
 */
final class Starts {

    private final InFront front;
    private final Tried tried;
    private final WorkingTime time;
    private final List<Vehicle> waiting;

    Starts(InFront front, Tried tried) {
        this.front = front;
        this.tried = tried;
        this.time = Lateness.counted(front.line());
        List<String> names = front.names();
        this.waiting = front.line().vehicles().stream()
                .filter(one -> names.contains(one.name()))
                .toList();
    }

    Set<List<Integer>> all() {
        var starts = new LinkedHashSet<List<Integer>>();
        starts.add(front.today());
        starts.add(sorted(Comparator.comparingDouble(this::promised)));
        List<Urgency> urgency = front.today().stream().map(this::urgency).toList();
        starts.add(sorted(Comparator.comparing(urgency::get, Urgency.MOST_FIRST)));
        return starts;
    }

    private List<Integer> sorted(Comparator<Integer> first) {
        return front.today().stream()
                .sorted(Comparator.<Integer>comparingInt(one -> front.group(one)[0])
                        .thenComparing(first))
                .toList();
    }

    private double promised(int vehicle) {
        return waiting.get(vehicle).promised().orElse(Double.POSITIVE_INFINITY);
    }

    /** @param slack and what is left to the promise, in working minutes from now */
    record Urgency(double slack, double promised, double left) {

        static final Comparator<Urgency> MOST_FIRST = Comparator.comparing((Urgency one) -> one.promised > 0)
                .thenComparingDouble(one -> one.promised > 0 ? one.promised / one.left : one.slack);
    }

    private Urgency urgency(int vehicle) {
        double now = time.worked(0);
        double promised = time.worked(promised(vehicle)) - now;
        double left = time.worked(medianIfFirst(vehicle)) - now;
        return new Urgency(promised - left, promised, left);
    }

    private double medianIfFirst(int vehicle) {
        List<Integer> order = new ArrayList<>(front.today());
        order.remove(vehicle);
        order.add(front.group(vehicle)[0], vehicle);
        Line line = front.in(order);
        return tried.forecast(line).of(waiting.get(vehicle).name()).finish().median();
    }
}

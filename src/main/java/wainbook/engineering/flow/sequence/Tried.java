package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.Lateness;
import wainbook.engineering.flow.forecast.model.Line;

/** The orders tried so far, each once, all with the same draws. */
final class Tried {

    private final InFront front;
    private final Budget budget;
    private final Map<List<Integer>, Double> late = new LinkedHashMap<>();
    private double least = Double.POSITIVE_INFINITY;
    private int cost;

    Tried(InFront front, Budget budget) {
        this.front = front;
        this.budget = budget;
    }

    /** Mean late working minutes of all that are promised. */
    double late(List<Integer> order) {
        Double known = late.get(order);
        if (known == null) {
            Line line = front.in(order);
            known = Lateness.of(line, forecast(line)).meanMinutes();
            late.put(order, known);
            least = Math.min(least, known);
        }
        return known;
    }

    boolean known(List<Integer> order) {
        return late.containsKey(order);
    }

    /** Of an order that is looked at for something else. */
    Forecast forecast(Line line) {
        cost++;
        return Forecast.of(line, budget.search());
    }

    int orders() {
        return late.size();
    }

    /** Forecasts made. */
    int cost() {
        return cost;
    }

    double least() {
        return least;
    }

    /**
     * Of those with less lateness than today's order, the ones that no other beats in lateness without more changes: the least late
     * first, so many at most.
     */
    List<List<Integer>> worthALook(int most) {
        List<Map.Entry<List<Integer>, Double>> nearest = late.entrySet().stream()
                .sorted(Comparator.<Map.Entry<List<Integer>, Double>>comparingInt(
                                entry -> InFront.changes(entry.getKey()))
                        .thenComparing(Map.Entry::getValue))
                .toList();
        var found = new ArrayList<List<Integer>>();
        double best = nearest.isEmpty() ? 0 : nearest.get(0).getValue();
        for (Map.Entry<List<Integer>, Double> entry : nearest) {
            if (entry.getValue() < best - Descent.HAIR) {
                best = entry.getValue();
                found.add(0, entry.getKey());
            }
        }
        return found.subList(0, Math.min(most, found.size()));
    }
}

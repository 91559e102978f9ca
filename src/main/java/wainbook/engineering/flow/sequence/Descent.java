package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * From an order to a better one as long as there is one: each vehicle in turn is put in the place, or changes places with the one, that
 * makes the line least late. It ends when a round over all of them betters nothing.
 */
final class Descent {

    /** Sums of doubles are no truer. */
    static final double HAIR = 1e-9;

    private final InFront front;
    private final Tried tried;
    private final BooleanSupplier goesOn;
    private final Random turns;

    /** @param goesOn asked before each order that was not tried yet */
    Descent(InFront front, Tried tried, long seed, BooleanSupplier goesOn) {
        this.front = front;
        this.tried = tried;
        this.goesOn = goesOn;
        this.turns = new Random(seed);
    }

    /** Whether it came to an order that no move of one vehicle betters. */
    boolean from(List<Integer> start) {
        if (!mayTry(start)) {
            return false;
        }
        List<Integer> order = start;
        boolean better = true;
        while (better) {
            better = false;
            for (int vehicle : turns()) {
                List<Integer> next = best(order, vehicle);
                if (!goesOn.getAsBoolean()) {
                    return false;
                }
                better = better || !next.equals(order);
                order = next;
            }
        }
        return true;
    }

    private List<Integer> turns() {
        List<Integer> all = new ArrayList<>(front.today());
        Collections.shuffle(all, turns);
        return all;
    }

    private List<Integer> best(List<Integer> order, int vehicle) {
        List<Integer> best = order;
        for (List<Integer> one : moves(order, order.indexOf(vehicle))) {
            if (mayTry(one) && better(one, best)) {
                best = one;
            }
        }
        return best;
    }

    private boolean mayTry(List<Integer> order) {
        return tried.known(order) || goesOn.getAsBoolean();
    }

    private boolean better(List<Integer> one, List<Integer> best) {
        return tried.late(one) < tried.late(best) - HAIR;
    }

    private Set<List<Integer>> moves(List<Integer> order, int place) {
        int[] group = front.group(place);
        var moves = new LinkedHashSet<List<Integer>>();
        for (int to = group[0]; to <= group[1]; to++) {
            if (to != place) {
                var inserted = new ArrayList<>(order);
                inserted.add(to, inserted.remove(place));
                moves.add(List.copyOf(inserted));
                var swapped = new ArrayList<>(order);
                Collections.swap(swapped, place, to);
                moves.add(List.copyOf(swapped));
            }
        }
        return moves;
    }
}

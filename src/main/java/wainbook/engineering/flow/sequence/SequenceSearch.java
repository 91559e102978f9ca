package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.Lateness;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.sequence.Found.Ending;
import wainbook.engineering.flow.sequence.Found.Verdict;

/**
 * Looks for the order of entry that makes a line least late: the mean, over draws of the forecast, of late working minutes summed over
 * all that are promised. Few vehicles: every order. More: by moves of one vehicle from several starts, which is a heuristic. Of the
 * orders tried some are looked at again on other draws, and of those that cannot be told apart from the least late the one nearest
 * today's is chosen; what it gains is found on draws used for nothing before.
 */
public final class SequenceSearch {

    /** Up to so many orders, all are tried: six vehicles of one group. */
    public static final int ALL = 720;

    private static final int LOOKED_AT_AGAIN = 12;

    private final InFront front;
    private final Budget budget;
    private final Tried tried;
    private Consumer<Progress> heard = progress -> {};
    private volatile boolean stopped;

    public SequenceSearch(InFront front, Budget budget) {
        this.front = front;
        this.budget = budget;
        this.tried = new Tried(front, budget);
    }

    /** May be asked from another thread; what was found until then is compared and told. */
    public void stop() {
        stopped = true;
    }

    public Found find(Consumer<Progress> watcher) {
        heard = watcher;
        double today = tried.late(front.today());
        if (today == 0) {
            return found(Ending.NO_MOVE_BETTERS, List.of());
        }
        told(Progress.Phase.SEARCHING);
        Ending ending = front.orders() <= Math.min(ALL, budget.orders()) ? all() : some();
        told(Progress.Phase.COMPARING);
        return found(ending, tried.worthALook(LOOKED_AT_AGAIN));
    }

    private Ending all() {
        for (List<Integer> order : front.all()) {
            if (stopped) {
                return Ending.STOPPED;
            }
            tried.late(order);
            told(Progress.Phase.SEARCHING);
        }
        return Ending.ALL_TRIED;
    }

    private Ending some() {
        Set<List<Integer>> starts = new Starts(front, tried).all();
        int left = starts.size();
        boolean settled = true;
        for (List<Integer> start : starts) {
            int share = tried.cost() + (budget.orders() - tried.cost()) / left;
            BooleanSupplier goesOn = () -> {
                told(Progress.Phase.SEARCHING);
                return !stopped && tried.cost() < share;
            };
            settled &= new Descent(front, tried, budget.seed(), goesOn).from(start);
            left--;
        }
        return settled ? Ending.NO_MOVE_BETTERS : stopped ? Ending.STOPPED : Ending.BUDGET;
    }

    private Found found(Ending ending, List<List<Integer>> worthALook) {
        List<Integer> chosen = worthALook.isEmpty() ? front.today() : chosen(worthALook);
        Comparison comparison = Comparison.of(front, chosen, budget);
        double lateToday = tried.late(front.today());
        return new Found(
                verdict(lateToday, worthALook.isEmpty(), comparison),
                front.names(),
                front.names(chosen),
                tried.orders(),
                front.orders(),
                ending,
                budget.searching(),
                tried.late(chosen),
                lateToday,
                comparison);
    }

    private static Verdict verdict(double lateToday, boolean noneBetter, Comparison comparison) {
        if (lateToday == 0) {
            return Verdict.NOBODY_LATE;
        }
        if (noneBetter) {
            return Verdict.NONE_BETTER;
        }
        if (!comparison.shown()) {
            return Verdict.NOT_SHOWN;
        }
        return comparison.enough() ? Verdict.BETTER : Verdict.TOO_LITTLE;
    }

    private record Look(List<Integer> order, Lateness late) {}

    private List<Integer> chosen(List<List<Integer>> worthALook) {
        var looks = new ArrayList<Look>();
        for (List<Integer> order : worthALook) {
            Line line = front.in(order);
            looks.add(new Look(order, Lateness.of(line, Forecast.of(line, budget.choice()))));
        }
        Look best = looks.stream()
                .min(Comparator.comparingDouble(one -> one.late().meanMinutes()))
                .orElseThrow();
        return looks.stream()
                .filter(one -> one.late().vanishing(best.late()).low() <= 0)
                .min(Comparator.comparingInt(one -> InFront.changes(one.order())))
                .orElse(best)
                .order();
    }

    private void told(Progress.Phase phase) {
        heard.accept(new Progress(
                phase,
                tried.orders(),
                (int) Math.min(front.orders(), budget.orders()),
                tried.late(front.today()),
                tried.least()));
    }
}

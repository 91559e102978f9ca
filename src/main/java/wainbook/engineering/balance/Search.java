package wainbook.engineering.balance;

import com.google.ortools.sat.CpModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Looks for the best balance of a work. Fewest stations: is there one with as many as the bound says, then with one more, until
 * there is. Shortest cycle: between the bound and what ranked positional weights need. Then, at that number and that cycle, the
 * smoothest or the one with the least change.
 */
public final class Search {

    private static final double NANO = 1e9;
    /** Of the seconds, for the first question; what it leaves goes to the choice among equals. */
    private static final double FIRST = 0.8;
    /** Of the seconds left, for one number of stations while greater ones are still to be tried. */
    private static final double ONE_NUMBER = 0.6;

    private final Work work;
    private final Aim aim;
    private final Ticks ticks;
    private final Precedence precedence;
    private final Kept kept;
    private final QuickStart quick;
    private final Solver solver = new Solver();
    private Consumer<Progress> heard = progress -> {};
    private long begun;

    private Search(Work work, Aim aim, Precedence precedence) {
        this.work = work;
        this.aim = aim;
        this.precedence = precedence;
        this.ticks = Ticks.of(work, aim.taktMinutes().stream().mapToDouble(Double::doubleValue));
        this.kept = new Kept(work, ticks, precedence);
        this.quick = new QuickStart(work, ticks, precedence, kept);
    }

    /** Empty if the tasks wait for each other in a circle. */
    public static Optional<Search> of(Work work, Aim aim) {
        return Precedence.of(work.tasks()).map(precedence -> new Search(work, aim, precedence));
    }

    /** May be asked from another thread; what was found until then is told. */
    public void stop() {
        solver.stop();
    }

    public Found find(Consumer<Progress> watcher) {
        heard = watcher;
        begun = System.nanoTime();
        return aim.taktMinutes().map(this::fewest).orElseGet(this::shortest);
    }

    private Found fewest(double taktMinutes) {
        long cycle = ticks.under(taktMinutes);
        if (IntStream.range(0, ticks.size()).anyMatch(task -> tooLong(task, cycle)) || cycle == 0) {
            return none(0, true);
        }
        int bound = (int) Bounds.stations(work, ticks, cycle);
        Optional<int[]> start = quick.stations(cycle, aim.stations());
        int most = start.map(PositionalWeight::count).orElse(aim.stations() + 1);
        int proved = Math.max(1, bound);
        boolean gapless = true;
        for (int stations = proved; stations < most; stations++) {
            told(
                    start.map(PositionalWeight::count).stream()
                            .mapToDouble(Integer::doubleValue)
                            .findFirst(),
                    proved);
            double seconds = left(aim.then() == Aim.Then.ANY ? 1 : FIRST) * (stations + 1 == most ? 1 : ONE_NUMBER);
            Optional<Model> model = model(stations, cycle, cycle, Optional.empty());
            Solver.Solved solved = solved(model, Model::any, seconds, Search::unheard);
            Optional<int[]> placed = sound(solved, stations, cycle);
            if (placed.isPresent()) {
                return chosen(placed.get(), stations, cycle, stations, proved);
            }
            gapless = gapless && solved.ending() == Solver.Ending.NONE;
            proved = gapless ? stations + 1 : proved;
        }
        if (start.isEmpty()) {
            return none(proved, gapless);
        }
        return chosen(start.get(), most, cycle, most, proved);
    }

    private boolean tooLong(int task, long cycle) {
        return ticks.rowNumbers().stream()
                .anyMatch(row -> ticks.rows()[row][task] > ticks.times()[row] * cycle * work.mostSides());
    }

    private Found shortest() {
        int stations = aim.stations();
        long step = ticks.step();
        long bound = Bounds.up(Bounds.cycle(work, ticks, stations), step) * step;
        Optional<QuickStart.Start> quickest = quick.cycle(stations, bound, step);
        Optional<int[]> start = quickest.map(QuickStart.Start::placed);
        long most = quickest.map(QuickStart.Start::cycle).orElseGet(quick::everything);
        OptionalDouble quickly =
                start.map(placed -> OptionalDouble.of(ticks.minutes(most))).orElse(OptionalDouble.empty());
        if (start.isPresent() && most <= bound) {
            return chosen(start.get(), stations, most, ticks.minutes(most), ticks.minutes(bound));
        }
        Optional<Model> model = model(stations, bound, most, start);
        told(quickly, ticks.minutes(bound));
        Solver.Solved solved = solved(
                model,
                Model::shortestCycle,
                left(aim.then() == Aim.Then.ANY ? 1 : FIRST),
                (cycle, lower) ->
                        told(OptionalDouble.of(ticks.minutes(Math.round(cycle))), ticks.minutes(Math.max(bound, (long)
                                Math.ceil(lower - 1e-6)))));
        Optional<int[]> placed = sound(solved, stations, most).or(() -> start);
        if (placed.isEmpty()) {
            return none(ticks.minutes(bound), solved.ending() == Solver.Ending.NONE);
        }
        long cycle =
                solved.placed().isPresent() && sound(solved, stations, most).isPresent()
                        ? Math.min(most, Math.round(solved.objective()))
                        : most;
        long lower = Math.max(bound, (long) Math.ceil(Math.min(solved.bound(), (double) cycle) - 1e-6));
        boolean closed = solved.ending() == Solver.Ending.PROVED || lower >= cycle;
        return chosen(
                placed.get(),
                stations,
                cycle,
                ticks.minutes(cycle),
                ticks.minutes(closed ? cycle : Bounds.up(lower, step) * step));
    }

    /** Among those with as many stations and this cycle. */
    private Found chosen(int[] first, int stations, long cycle, double best, double bound) {
        int[] placed = first;
        boolean proved = aim.then() == Aim.Then.ANY;
        if (!proved && stations > 1) {
            told(OptionalDouble.of(best), bound, Progress.Phase.CHOOSING);
            Optional<Model> model = model(stations, cycle, cycle, Optional.of(first));
            Solver.Solved solved = solved(
                    model,
                    aim.then() == Aim.Then.SMOOTHEST ? Model::smoothest : one -> one.leastChange(aim.today()),
                    left(1),
                    Search::unheard);
            Optional<int[]> better = sound(solved, stations, cycle);
            placed = better.orElse(first);
            proved = better.isPresent() && solved.ending() == Solver.Ending.PROVED;
        }
        return told(placed, stations, best, bound, proved || stations == 1);
    }

    private Found told(int[] placed, int stations, double best, double bound, boolean chosen) {
        List<List<String>> lists = Stream.generate(() -> (List<String>) new ArrayList<String>())
                .limit(stations)
                .toList();
        precedence.order().stream()
                .sorted(Comparator.comparingInt(task -> placed[task]))
                .forEach(task ->
                        lists.get(placed[task]).add(work.tasks().get(task).id()));
        long[] loads = new long[stations];
        IntStream.range(0, placed.length).forEach(task -> loads[placed[task]] += ticks.rows()[0][task]);
        List<Double> minutes = IntStream.range(0, stations)
                .mapToObj(place -> ticks.averageMinutes(loads[place]) / work.sides(place))
                .toList();
        double greatest =
                minutes.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return new Found(
                Optional.of(lists.stream().map(List::copyOf).toList()),
                minutes,
                greatest,
                best,
                bound,
                bound >= best,
                chosen,
                ticks.exact());
    }

    private Found none(double bound, boolean proven) {
        return new Found(Optional.empty(), List.of(), 0, 0, bound, proven, false, ticks.exact());
    }

    /** Absent where there is no native code for this machine: then only the quick rule and the bounds speak. */
    private Optional<Model> model(int stations, long least, long most, Optional<int[]> hint) {
        if (!Solver.there()) {
            return Optional.empty();
        }
        var model = new Model(work, ticks, precedence, stations, least, most);
        hint.filter(placed -> !model.hopeless()).ifPresent(model::hint);
        return Optional.of(model);
    }

    private Solver.Solved solved(
            Optional<Model> model, Function<Model, CpModel> asked, double seconds, Solver.Better better) {
        if (model.isEmpty()) {
            return new Solver.Solved(Solver.Ending.OPEN, Optional.empty(), 0, Double.NEGATIVE_INFINITY);
        }
        return model.get().hopeless()
                ? new Solver.Solved(Solver.Ending.NONE, Optional.empty(), 0, Double.POSITIVE_INFINITY)
                : solver.solve(model.get(), asked.apply(model.get()), seconds, better);
    }

    private Optional<int[]> sound(Solver.Solved solved, int stations, long cycle) {
        return solved.placed().filter(placed -> kept.all(placed, stations, cycle));
    }

    private static void unheard(double objective, double bound) {}

    private double left(double share) {
        return aim.limitS() * share - seconds();
    }

    private double seconds() {
        return (System.nanoTime() - begun) / NANO;
    }

    private void told(OptionalDouble best, double bound) {
        told(best, bound, Progress.Phase.SEARCHING);
    }

    private void told(OptionalDouble best, double bound, Progress.Phase phase) {
        heard.accept(new Progress(phase, best, bound, seconds()));
    }
}

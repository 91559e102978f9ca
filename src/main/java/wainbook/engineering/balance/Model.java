package wainbook.engineering.balance;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A balance as a constraint model: a Boolean for each task and each station of its window, exactly one a task; a task's station
 * is the sum of its Booleans times their numbers; it is not before the stations of what comes first; loads keep to the cycle.
 */
final class Model {

    private final CpModel model = new CpModel();
    private final Work work;
    private final Ticks ticks;
    private final Windows windows;
    private final int stations;
    private final IntVar cycle;
    private final List<Map<Integer, BoolVar>> at = new ArrayList<>();
    private final List<LinearExpr> station = new ArrayList<>();

    /** @param least and most of the cycle, in ticks; alike where it is given */
    Model(Work work, Ticks ticks, Precedence precedence, int stations, long least, long most) {
        this.work = work;
        this.ticks = ticks;
        this.stations = stations;
        this.windows = new Windows(work, ticks, precedence, stations, most);
        this.cycle = model.newIntVar(least, Math.max(least, most), "cycle");
        if (!windows.none()) {
            IntStream.range(0, ticks.size()).forEach(this::place);
            precedence.arcs().forEach(arc -> model.addLessOrEqual(station.get(arc.first()), station.get(arc.then())));
            IntStream.range(0, stations).forEach(place -> ticks.rowNumbers().forEach(row -> limit(place, row)));
            IntStream.range(0, stations).forEach(place -> sideBySide(place, precedence));
            work.rules().forEach(this::keep);
            work.chance().ifPresent(this::within);
        }
    }

    /** Whether it can be seen without a search that there is no balance. */
    boolean hopeless() {
        return windows.none();
    }

    private void place(int task) {
        Map<Integer, BoolVar> places = new HashMap<>();
        LinearExprBuilder number = LinearExpr.newBuilder();
        windows.of(task).forEach(place -> {
            BoolVar here = model.newBoolVar(task + "@" + place);
            places.put(place, here);
            number.addTerm(here, place);
        });
        model.addExactlyOne(places.values().toArray(Literal[]::new));
        at.add(places);
        station.add(number.build());
    }

    private List<Integer> possible(int place) {
        return IntStream.range(0, ticks.size())
                .filter(task -> at.get(task).containsKey(place))
                .boxed()
                .toList();
    }

    private LinearExpr load(int place, long[] time) {
        List<Integer> tasks = possible(place);
        return LinearExpr.weightedSum(
                tasks.stream().map(task -> at.get(task).get(place)).toArray(LinearArgument[]::new),
                tasks.stream().mapToLong(task -> time[task]).toArray());
    }

    private void limit(int place, int row) {
        int capacity = work.capacity(place);
        long[] time = IntStream.range(0, ticks.size())
                .mapToLong(
                        task -> ticks.rows()[row][task] * work.tasks().get(task).persons())
                .toArray();
        model.addLessOrEqual(load(place, time), LinearExpr.term(cycle, ticks.times()[row] * capacity));
    }

    /** Where several work at a station, what they do is laid out in time: nobody is divided, and what comes first ends first. */
    private void sideBySide(int place, Precedence precedence) {
        if (work.persons(place) < 2) {
            return;
        }
        for (int row : ticks.rowNumbers()) {
            CumulativeConstraint persons = model.addCumulative(work.persons(place));
            long sides = ticks.times()[row] * work.sides(place);
            long horizon = sides * most();
            Map<Integer, IntVar> start = new HashMap<>();
            for (int task : possible(place)) {
                long time = ticks.rows()[row][task];
                BoolVar here = at.get(task).get(place);
                IntVar begin = model.newIntVar(0, horizon, task + " begins");
                start.put(task, begin);
                persons.addDemand(
                        model.newOptionalFixedSizeIntervalVar(begin, time, here, task + " at " + place),
                        work.tasks().get(task).persons());
                model.addLessOrEqual(LinearExpr.affine(begin, 1, time), LinearExpr.term(cycle, sides))
                        .onlyEnforceIf(here);
            }
            precedence.arcs().stream()
                    .filter(arc -> start.containsKey(arc.first()) && start.containsKey(arc.then()))
                    .forEach(arc -> model.addLessOrEqual(
                                    LinearExpr.affine(start.get(arc.first()), 1, ticks.rows()[row][arc.first()]),
                                    start.get(arc.then()))
                            .onlyEnforceIf(new Literal[] {
                                at.get(arc.first()).get(place),
                                at.get(arc.then()).get(place)
                            }));
        }
    }

    private long most() {
        return model.getBuilder().getVariables(cycle.getIndex()).getDomain(1);
    }

    private void keep(Rule rule) {
        Map<String, Integer> places = Precedence.places(work.tasks());
        if (rule instanceof Rule.Together together) {
            model.addEquality(station.get(places.get(together.one())), station.get(places.get(together.other())));
        } else if (rule instanceof Rule.Apart apart) {
            Map<Integer, BoolVar> one = at.get(places.get(apart.one()));
            Map<Integer, BoolVar> other = at.get(places.get(apart.other()));
            one.keySet().stream()
                    .filter(other::containsKey)
                    .forEach(place -> model.addAtMostOne(new Literal[] {one.get(place), other.get(place)}));
        } else if (rule instanceof Rule.Distance distance) {
            model.addLessOrEqual(
                    LinearExpr.newBuilder()
                            .add(station.get(places.get(distance.first())))
                            .add(distance.stations())
                            .build(),
                    station.get(places.get(distance.then())));
        } else if (rule instanceof Rule.Gathered gathered) {
            gather(gathered, places);
        }
    }

    private void gather(Rule.Gathered gathered, Map<String, Integer> places) {
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (int place = 0; place < stations; place++) {
            int here = place;
            BoolVar any = model.newBoolVar("gathered at " + place);
            used.add(any);
            gathered.tasks().stream()
                    .map(id -> at.get(places.get(id)).get(here))
                    .filter(Objects::nonNull)
                    .forEach(task -> model.addImplication(task, any));
        }
        model.addLessOrEqual(used.build(), gathered.stations());
    }

    private void within(double chance) {
        long factor = Chance.factor(chance);
        for (int place = 0; place < stations; place++) {
            LinearExpr load = load(place, ticks.rows()[0]);
            long times = ticks.times()[0] * work.sides(place);
            long most = times * most();
            IntVar left = model.newIntVar(0, most, "left at " + place);
            IntVar square = model.newIntVar(0, most * most, "its square");
            model.addEquality(
                    LinearExpr.newBuilder().add(load).add(left).build(), LinearExpr.term(cycle, ticks.times()[0]));
            model.addMultiplicationEquality(square, left, left);
            long scale = ticks.times()[0] * ticks.times()[0];
            LinearExpr variance = load(
                    place,
                    LongStream.of(ticks.variance())
                            .map(one -> one * scale * factor)
                            .toArray());
            model.addGreaterOrEqual(LinearExpr.term(square, Chance.MILLION), variance);
        }
    }

    CpModel shortestCycle() {
        model.minimize(cycle);
        return model;
    }

    CpModel any() {
        return model;
    }

    /** The least sum of squared loads in a cycle; loads above a million are counted in coarser units. */
    CpModel smoothest() {
        long sides = work.mostSides();
        long most = ticks.times()[0] * most() * work.mostCapacity() * sides;
        long unit = Math.max(1, Bounds.up(most, Chance.MILLION));
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int place = 0; place < stations; place++) {
            long each = sides / work.sides(place);
            IntVar load = model.newIntVar(0, most / unit + 1, "load " + place);
            IntVar square = model.newIntVar(0, (most / unit + 1) * (most / unit + 1), "its square");
            long[] time = LongStream.of(ticks.rows()[0]).map(one -> one * each).toArray();
            model.addGreaterOrEqual(LinearExpr.term(load, unit), load(place, time));
            model.addMultiplicationEquality(square, load, load);
            sum.add(square);
        }
        model.minimize(sum.build());
        return model;
    }

    /** The fewest tasks that go elsewhere than where they are today. */
    CpModel leastChange(Map<String, Integer> today) {
        LinearExprBuilder stays = LinearExpr.newBuilder();
        for (int task = 0; task < ticks.size(); task++) {
            Optional.ofNullable(today.get(work.tasks().get(task).id()))
                    .map(place -> place - 1)
                    .map(at.get(task)::get)
                    .ifPresent(stays::add);
        }
        model.maximize(stays.build());
        return model;
    }

    void hint(int[] placed) {
        for (int task = 0; task < at.size(); task++) {
            int chosen = placed[task];
            at.get(task).forEach((place, here) -> model.addHint((Literal) here, place == chosen));
        }
    }

    LinearExpr station(int task) {
        return station.get(task);
    }

    int size() {
        return station.size();
    }
}

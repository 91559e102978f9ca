package wainbook.engineering.balance;

import java.util.Map;
import java.util.stream.IntStream;

/** Looks at a balance without the solver: whether it keeps precedence, the cycle and the rules. An answer is told only after that. */
final class Kept {

    private final Work work;
    private final Ticks ticks;
    private final Precedence precedence;
    private final Map<String, Integer> places;

    Kept(Work work, Ticks ticks, Precedence precedence) {
        this.work = work;
        this.ticks = ticks;
        this.precedence = precedence;
        this.places = Precedence.places(work.tasks());
    }

    /** What several persons do side by side is looked at as a sum only. */
    boolean all(int[] station, int stations, long cycle) {
        return IntStream.of(station).allMatch(place -> place >= 0 && place < stations)
                && precedence.arcs().stream().allMatch(arc -> station[arc.first()] <= station[arc.then()])
                && IntStream.range(0, stations).allMatch(place -> loads(station, place, cycle))
                && IntStream.range(0, station.length)
                        .allMatch(task -> work.tasks().get(task).persons() <= work.persons(station[task]))
                && work.rules().stream().allMatch(rule -> keeps(rule, station));
    }

    private boolean loads(int[] station, int place, long cycle) {
        return ticks.rowNumbers().stream()
                        .allMatch(row -> load(ticks.rows()[row], station, place)
                                <= ticks.times()[row] * cycle * work.capacity(place))
                && work.chance().stream().allMatch(chance -> within(chance, station, place, cycle));
    }

    private boolean within(double chance, int[] station, int place, long cycle) {
        double mean = load(ticks.rows()[0], station, place) / (double) ticks.times()[0];
        return Chance.load(mean, (double) load(ticks.variance(), station, place), chance)
                <= (double) cycle * work.sides(place);
    }

    private static long load(long[] time, int[] station, int place) {
        return IntStream.range(0, station.length)
                .filter(task -> station[task] == place)
                .mapToLong(task -> time[task])
                .sum();
    }

    private boolean keeps(Rule rule, int[] station) {
        if (rule instanceof Rule.Together together) {
            return at(together.one(), station) == at(together.other(), station);
        }
        if (rule instanceof Rule.Apart apart) {
            return at(apart.one(), station) != at(apart.other(), station);
        }
        if (rule instanceof Rule.Distance distance) {
            return at(distance.first(), station) + distance.stations() <= at(distance.then(), station);
        }
        if (rule instanceof Rule.Only only) {
            return only.tasks().stream().allMatch(id -> only.stations().contains(at(id, station) + 1));
        }
        return !(rule instanceof Rule.Gathered gathered)
                || gathered.tasks().stream()
                                .map(id -> at(id, station))
                                .distinct()
                                .count()
                        <= gathered.stations();
    }

    private int at(String id, int[] station) {
        return station[places.get(id)];
    }
}

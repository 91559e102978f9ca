package wainbook.engineering.balance;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What is to be shared out, with the rules of the works.
 *
 * @param crew persons at each station, one where the list ends; more shorten a station's time only as its tasks can run side by
 *     side
 * @param sides vehicles that stand side by side at a station, one where the list ends; each stays for as many cycles
 * @param overrun share of the cycle by which a station may be over for one kind of vehicle, while its average keeps to the cycle;
 *     absent where only the average counts
 * @param chance that a station keeps to the cycle, from independent normal times; absent where only means count
 */
public record Work(
        List<Kind> kinds,
        List<Task> tasks,
        List<Rule> rules,
        List<Integer> crew,
        List<Integer> sides,
        Optional<Double> overrun,
        Optional<Double> chance) {

    public Work {
        kinds = List.copyOf(kinds);
        tasks = List.copyOf(tasks);
        rules = List.copyOf(rules);
        crew = List.copyOf(crew);
        sides = List.copyOf(sides);
    }

    /** One vehicle at each station. */
    public Work(
            List<Kind> kinds,
            List<Task> tasks,
            List<Rule> rules,
            List<Integer> crew,
            Optional<Double> overrun,
            Optional<Double> chance) {
        this(kinds, tasks, rules, crew, List.of(), overrun, chance);
    }

    /** Without kinds and without rules but precedence. */
    public static Work of(List<Task> tasks) {
        return new Work(List.of(Kind.ONLY), tasks, List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    public Work under(List<Rule> others) {
        return new Work(kinds, tasks, others, crew, sides, overrun, chance);
    }

    public Work within(double share) {
        return new Work(kinds, tasks, rules, crew, sides, overrun, Optional.of(share));
    }

    public Work with(List<Integer> persons) {
        return new Work(kinds, tasks, rules, persons, sides, overrun, chance);
    }

    int persons(int station) {
        return station < crew.size() ? crew.get(station) : 1;
    }

    int sides(int station) {
        return station < sides.size() ? sides.get(station) : 1;
    }

    /** Cycles of work that a station can do in one cycle, at most. */
    int capacity(int station) {
        return persons(station) * sides(station);
    }

    int mostCapacity() {
        return IntStream.range(0, Math.max(1, Math.max(crew.size(), sides.size())))
                .map(this::capacity)
                .max()
                .orElse(1);
    }

    int mostSides() {
        return sides.stream().mapToInt(Integer::intValue).max().orElse(1);
    }

    /** Of so many stations together. */
    long capacities(int stations) {
        return IntStream.range(0, stations).map(this::capacity).sum();
    }
}

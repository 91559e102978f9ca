package wainbook.engineering.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Three tasks of ten minutes, the second behind the first: a balance that breaks a rule is seen without the solver. */
class KeptTest {

    private static final List<Task> TASKS = List.of(task("a", 10, 3, 1), task("b", 10, 3, 1, "a"), task("c", 10, 4, 1));

    @Test
    void a_balance_that_keeps_all_is_sound() {
        assertThat(kept(work(), 10, 1, 2, 3)).isTrue();
        assertThat(kept(work(), 20, 1, 1, 2)).isTrue();
    }

    @Test
    void nothing_is_done_beyond_the_stations_there_are() {
        assertThat(kept(work(), 10, 1, 2, 4)).isFalse();
        assertThat(kept(work(), 10, 1, 2, 0)).isFalse();
    }

    @Test
    void nothing_is_done_before_what_comes_first() {
        assertThat(kept(work(), 10, 2, 1, 3)).isFalse();
    }

    @Test
    void no_station_is_over_the_cycle() {
        assertThat(kept(work(), 19, 1, 1, 2)).isFalse();
    }

    @Test
    void two_persons_or_two_vehicles_side_by_side_do_two_cycles_of_work() {
        assertThat(kept(work().with(List.of(2)), 10, 1, 1, 2)).isTrue();
        assertThat(kept(work().with(List.of(2)), 9, 1, 1, 2)).isFalse();
        assertThat(kept(work().with(List.of(1, 2)), 10, 1, 1, 2)).isFalse();
        Work sides = new Work(
                List.of(Kind.ONLY), TASKS, List.of(), List.of(), List.of(2), Optional.empty(), Optional.empty());
        assertThat(kept(sides, 10, 1, 1, 2)).isTrue();
    }

    @Test
    void a_task_for_two_is_where_two_are() {
        Work lifted = Work.of(List.of(task("a", 10, 0, 2), task("b", 10, 0, 1), task("c", 10, 0, 1)));

        assertThat(kept(lifted, 10, 1, 2, 3)).isFalse();
        assertThat(kept(lifted.with(List.of(2)), 10, 1, 2, 3)).isTrue();
        assertThat(kept(lifted.with(List.of(2)), 10, 2, 1, 3)).isFalse();
    }

    @Test
    void each_rule_is_looked_at() {
        assertThat(kept(under(new Rule.Together("a", "c")), 20, 1, 2, 1)).isTrue();
        assertThat(kept(under(new Rule.Together("a", "c")), 20, 1, 2, 2)).isFalse();
        assertThat(kept(under(new Rule.Apart("b", "c")), 20, 1, 2, 1)).isTrue();
        assertThat(kept(under(new Rule.Apart("b", "c")), 20, 1, 2, 2)).isFalse();
        assertThat(kept(under(new Rule.Distance("a", "c", 2)), 20, 1, 2, 3)).isTrue();
        assertThat(kept(under(new Rule.Distance("a", "c", 2)), 20, 1, 2, 2)).isFalse();
        assertThat(kept(under(new Rule.Only(Set.of("b", "c"), Set.of(2, 3))), 20, 1, 2, 3))
                .isTrue();
        assertThat(kept(under(new Rule.Only(Set.of("b", "c"), Set.of(2, 3))), 20, 1, 2, 1))
                .isFalse();
        assertThat(kept(under(new Rule.Gathered(Set.of("b", "c"), 1)), 20, 1, 2, 2))
                .isTrue();
        assertThat(kept(under(new Rule.Gathered(Set.of("b", "c"), 1)), 20, 1, 2, 3))
                .isFalse();
    }

    /** Means of 20 with variances 9 and 9: 20 + 1.644853627 √18 = 26.98. */
    @Test
    void a_station_keeps_the_cycle_with_the_chance_that_is_asked_for() {
        assertThat(kept(work().within(0.95), 27, 1, 1, 2)).isTrue();
        assertThat(kept(work().within(0.95), 26, 1, 1, 2)).isFalse();
    }

    /** Of two kinds, half and half, 5 and 15 minutes: 10 on average, 15 for the heavier. */
    @Test
    void the_heaviest_kind_has_its_own_limit() {
        Work kinds = new Work(
                List.of(new Kind("light", 1), new Kind("heavy", 1)),
                List.of(new Task("a", List.of(5.0, 15.0), 0, List.of(), 1)),
                List.of(),
                List.of(),
                Optional.of(0.4),
                Optional.empty());

        assertThat(kept(kinds, 1000, 1)).isFalse();
        assertThat(kept(kinds, 1072, 1)).isTrue();
    }

    private static Work work() {
        return Work.of(TASKS);
    }

    private static Work under(Rule rule) {
        return work().under(List.of(rule));
    }

    /** At most three stations; places from 1. */
    private static boolean kept(Work work, long cycle, int... places) {
        return new Kept(
                        work,
                        Ticks.of(work, DoubleStream.empty()),
                        Precedence.of(work.tasks()).orElseThrow())
                .all(IntStream.of(places).map(place -> place - 1).toArray(), 3, cycle);
    }

    private static Task task(String id, double minutes, double spread, int persons, String... after) {
        return new Task(id, List.of(minutes), spread, Stream.of(after).toList(), persons);
    }
}

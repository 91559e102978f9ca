package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Chance;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Kind;
import wainbook.engineering.balance.Rule;
import wainbook.engineering.balance.Search;
import wainbook.engineering.balance.Task;
import wainbook.engineering.balance.Work;

/**
 * Ten tasks in a takt of 95 minutes, two of them at high voltage (6 and 8), with the standard deviations of their times. The forms of
 * the rules are those of the surveys by Becker and Scholl (2006) and Boysen, Fliedner, Scholl (2007), from memory; the
 * numbers were computed by naming every balance.
 */
class BalanceOfARealWorksTest {

    private static final double TAKT = 95;
    private static final double LIMIT_S = 20;
    private static final List<Rule> SAFE = List.of(new Rule.Apart("3", "4"), new Rule.Gathered(Set.of("6", "8"), 1));
    private static final Work WORK = Work.of(List.of(
            task("1", 40, 4),
            task("2", 35, 4),
            task("3", 30, 3),
            task("4", 55, 6, "1", "3"),
            task("5", 50, 5, "2", "4"),
            task("6", 45, 5, "5"),
            task("7", 50, 5, "5"),
            task("8", 30, 3, "6", "7"),
            task("9", 35, 4, "4"),
            task("10", 25, 3, "8", "9")));

    @Test
    void means_alone_need_five_stations() {
        assertThat(fewest(WORK).count()).isEqualTo(5);
    }

    @Test
    void safety_costs_one_station() {
        assertThat(fewest(WORK.under(SAFE)).count()).isEqualTo(6);
    }

    @Test
    void uncertain_times_cost_two() {
        assertThat(fewest(WORK.within(0.95)).count()).isEqualTo(7);
    }

    @Test
    void both_together_cost_no_more() {
        assertThat(fewest(WORK.under(SAFE).within(0.95)).count()).isEqualTo(7);
    }

    @Test
    void the_load_that_a_station_keeps_nineteen_times_in_twenty() {
        assertThat(Chance.load(75, 34, 0.95)).isCloseTo(84.591062373, within(1e-8));
        assertThat(Chance.load(85, 45, 0.95)).isCloseTo(96.034013569, within(1e-8));
    }

    /** The least greatest of all with seven stations is that of the station with both high-voltage tasks. */
    @Test
    void seven_stations_at_their_shortest_cycle() {
        Found found = find(WORK.under(SAFE).within(0.95), Aim.stations(7, LIMIT_S));

        assertThat(found.proven()).isTrue();
        assertThat(found.best()).isEqualTo(Math.ceil(84.591062373));
        assertThat(found.placed().orElseThrow()).contains(List.of("6", "8"));
    }

    @Test
    void work_that_is_together_apart_distant_or_bound_to_a_place_is_left_so() {
        Found found = find(
                WORK.under(List.of(
                        new Rule.Together("2", "9"),
                        new Rule.Distance("5", "7", 2),
                        new Rule.Only(Set.of("8"), Set.of(6)),
                        new Rule.Apart("1", "3"))),
                Aim.takt(TAKT, 10, LIMIT_S));
        List<List<String>> placed = found.placed().orElseThrow();

        assertThat(found.proven()).isTrue();
        assertThat(at(placed, "2")).isEqualTo(at(placed, "9"));
        assertThat(at(placed, "7")).isGreaterThanOrEqualTo(at(placed, "5") + 2);
        assertThat(at(placed, "8")).isEqualTo(6);
        assertThat(at(placed, "1")).isNotEqualTo(at(placed, "3"));
    }

    @Test
    void rules_that_contradict_each_other_are_told_from_time_that_is_up() {
        List<Rule> contradiction = List.of(new Rule.Together("1", "2"), new Rule.Apart("1", "2"));

        Found found = find(WORK.under(contradiction), Aim.stations(6, LIMIT_S));

        assertThat(found.placed()).isEmpty();
        assertThat(found.proven()).isTrue();
    }

    /** Two people shorten a station only as far as two things can be done at once; one of forty minutes stays forty. */
    @Test
    void two_people_do_not_halve_what_one_has_to_do() {
        Work chain = Work.of(List.of(task("a", 40, 0), task("b", 30, 0, "a"), task("c", 20, 0, "b")));
        Work free = Work.of(List.of(task("a", 40, 0), task("b", 30, 0), task("c", 20, 0)));

        assertThat(find(chain.with(List.of(2)), Aim.stations(1, LIMIT_S)).best())
                .isEqualTo(90);
        assertThat(find(free.with(List.of(2)), Aim.stations(1, LIMIT_S)).best()).isEqualTo(50);
        assertThat(find(free.with(List.of(3)), Aim.stations(1, LIMIT_S)).best()).isEqualTo(40);
    }

    /** Shares 0.6, 0.3, 0.1; loads (80, 95, 110) (90, 90, 85) (70, 100, 130): averages 87.5, 89.5, 85. */
    @Test
    void kinds_count_by_their_share_and_the_heaviest_has_its_own_limit() {
        List<Kind> kinds = List.of(new Kind("one", 0.6), new Kind("two", 0.3), new Kind("three", 0.1));
        List<Task> tasks = List.of(
                new Task("a", List.of(80.0, 95.0, 110.0), 0, List.of(), 1),
                new Task("b", List.of(90.0, 90.0, 85.0), 0, List.of("a"), 1),
                new Task("c", List.of(70.0, 100.0, 130.0), 0, List.of("b"), 1));
        Work average = new Work(kinds, tasks, List.of(), List.of(), Optional.empty(), Optional.empty());
        Work limited = new Work(kinds, tasks, List.of(), List.of(), Optional.of(0.25), Optional.empty());
        Work wide = new Work(kinds, tasks, List.of(), List.of(), Optional.of(0.37), Optional.empty());

        assertThat(fewest(average).loadMinutes()).containsExactly(87.5, 89.5, 85.0);
        assertThat(fewest(limited).placed()).isEmpty();
        assertThat(fewest(limited).proven()).isTrue();
        assertThat(fewest(wide).count()).isEqualTo(3);
        assertThat(find(average, Aim.stations(3, LIMIT_S)).best()).isEqualTo(89.5);
        assertThat(find(limited, Aim.stations(3, LIMIT_S)).best()).isEqualTo(104);
    }

    @Test
    void the_least_change_leaves_what_can_stay() {
        List<List<String>> first = fewest(WORK).placed().orElseThrow();
        Map<String, Integer> today =
                first.stream().flatMap(List::stream).collect(Collectors.toMap(id -> id, id -> at(first, id)));

        Found again = find(WORK, Aim.takt(TAKT, 10, LIMIT_S).then(Aim.Then.LEAST_CHANGE, today));

        assertThat(again.chosen()).isTrue();
        assertThat(again.placed().orElseThrow().stream().map(Set::copyOf).toList())
                .isEqualTo(first.stream().map(Set::copyOf).toList());
    }

    private static int at(List<List<String>> placed, String id) {
        return IntStream.range(0, placed.size())
                        .filter(place -> placed.get(place).contains(id))
                        .findFirst()
                        .orElseThrow()
                + 1;
    }

    private static Found fewest(Work work) {
        Found found = find(work, Aim.takt(TAKT, 10, LIMIT_S));
        assertThat(found.proven()).isTrue();
        return found;
    }

    private static Found find(Work work, Aim aim) {
        return Search.of(work, aim).orElseThrow().find(progress -> {});
    }

    private static Task task(String id, double minutes, double spreadMinutes, String... after) {
        return new Task(id, List.of(minutes), spreadMinutes, Stream.of(after).toList(), 1);
    }
}

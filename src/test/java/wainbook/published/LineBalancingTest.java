package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Balance;
import wainbook.engineering.balance.Bounds;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Graphs;
import wainbook.engineering.balance.Graphs.Optimum;
import wainbook.engineering.balance.Search;
import wainbook.engineering.balance.Task;
import wainbook.engineering.balance.Work;

/**
 * Published precedence graphs with their optima: A. Scholl, Data of Assembly Line Balancing Problems, TH Darmstadt 1993/97; data and
 * standing of each value under {@code src/test/resources/published/salbp}. Bounds and the smoothest balance of Jackson's graph
 * were computed.
 */
class LineBalancingTest {

    private static final double LIMIT_S = 30;
    private static final List<Task> JACKSON = Graphs.read("JACKSON.IN2");

    static Stream<Optimum> allOfJackson() {
        return Graphs.optima().stream().filter(row -> row.file().equals("JACKSON.IN2"));
    }

    /** Of each graph up to sixty tasks the row in the middle of each of its two lists. */
    static Stream<Optimum> oneOfEachGraph() {
        return Graphs.optima().stream()
                .filter(row -> Graphs.read(row.file()).size() <= 60)
                .collect(Collectors.groupingBy(row -> row.type() + row.file()))
                .values()
                .stream()
                .map(rows -> rows.get(rows.size() / 2));
    }

    @ParameterizedTest
    @MethodSource({"allOfJackson", "oneOfEachGraph"})
    void published_optima_are_found_and_proved(Optimum row) {
        Found found = find(Graphs.read(row.file()), row.aim(60, LIMIT_S).then(Aim.Then.ANY, Map.of()));

        assertThat(found.best()).isEqualTo(row.best());
        assertThat(found.lowerBound()).isEqualTo(row.best());
        assertThat(found.proven()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"7, 8", "9, 6", "10, 5", "13, 4", "14, 4", "21, 3"})
    void fewest_stations_for_jackson(double taktMinutes, int stations) {
        var found = results(new Balance().of(inputs(Optional.of(taktMinutes), Optional.empty())));

        assertThat(found.count()).isEqualTo(stations);
        assertThat(found.stations()).hasSize(stations);
        assertThat(found.lowerBound()).isEqualTo(stations);
        assertThat(found.proven()).isTrue();
        assertThat(found.loadMinutes()).allMatch(load -> load <= taktMinutes);
    }

    @ParameterizedTest
    @CsvSource({"2, 23", "3, 16", "4, 12", "5, 10", "6, 9", "7, 8", "8, 7"})
    void shortest_cycle_for_jackson(int stations, double cycleMinutes) {
        var found = results(new Balance().of(inputs(Optional.empty(), Optional.of(stations))));

        assertThat(found.cycleMinutes()).isEqualTo(cycleMinutes);
        assertThat(found.count()).isEqualTo(stations);
        assertThat(found.lowerBound()).isEqualTo(cycleMinutes);
        assertThat(found.proven()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"7, 7, 7, 7", "9, 6, 6, 5", "10, 5, 5, 4", "13, 4, 1, 3", "14, 4, 1, 3", "21, 3, 0, 1"})
    void bounds_of_stations_for_jackson(long cycle, long byWork, long byHalves, long byThirds) {
        assertThat(Bounds.byWork(times(), cycle)).isEqualTo(byWork);
        assertThat(Bounds.byHalves(times(), cycle)).isEqualTo(byHalves);
        assertThat(Bounds.byThirds(times(), cycle)).isEqualTo(byThirds);
    }

    @ParameterizedTest
    @CsvSource({"2, 23", "3, 16", "4, 12", "5, 10", "6, 9", "7, 7", "8, 7", "9, 7"})
    void bounds_of_the_cycle_for_jackson(int stations, long bound) {
        assertThat(Bounds.cycle(times(), stations)).isEqualTo(bound);
    }

    /** Two of the four are equally smooth: 8 + 9 and 9 + 8 minutes at the first two stations. */
    @Test
    void smoothest_of_the_four_balances_of_jackson_in_ten_minutes() {
        var found = results(new Balance().of(inputs(Optional.of(10.0), Optional.empty())));

        assertThat(balances(0, new int[11], new long[5])).isEqualTo(4);
        assertThat(found.loadMinutes()).containsExactlyInAnyOrder(8.0, 9.0, 10.0, 10.0, 9.0);
        assertThat(found.smoothness()).isCloseTo(2.449489743, within(1e-9));
        assertThat(found.efficiency()).isCloseTo(0.92, within(1e-12));
        assertThat(found.smoothestProven()).isTrue();
    }

    /** Names every balance of Jackson's graph in five stations of ten minutes; its tasks are numbered as they can follow. */
    private static int balances(int task, int[] station, long[] load) {
        if (task == station.length) {
            return 1;
        }
        int first = JACKSON.get(task).after().stream()
                .mapToInt(before -> station[Integer.parseInt(before) - 1])
                .max()
                .orElse(0);
        int found = 0;
        for (int place = first; place < load.length; place++) {
            if (load[place] + times()[task] <= 10) {
                load[place] += times()[task];
                station[task] = place;
                found += balances(task + 1, station, load);
                load[place] -= times()[task];
            }
        }
        return found;
    }

    @Test
    void what_cannot_be_is_refused() {
        var longer = new Balance().of(new Balance.Inputs(pieces(), Optional.of(6.9), Optional.empty(), LIMIT_S));
        var circle = new Balance()
                .of(new Balance.Inputs(
                        List.of(
                                new Balance.Piece("a", 1, List.of("b")),
                                new Balance.Piece("b", 1, List.of("c")),
                                new Balance.Piece("c", 1, List.of("a"))),
                        Optional.of(6.9),
                        Optional.empty(),
                        LIMIT_S));

        assertThat(refusal(longer)).isEqualTo("task-longer-than-takt");
        assertThat(refusal(circle)).isEqualTo("precedence-cycle");
    }

    @Test
    void minutes_with_decimals_are_not_rounded_into_a_station() {
        List<Balance.Piece> tasks = Stream.of("a", "b", "c")
                .map(id -> new Balance.Piece(id, 0.1, List.of()))
                .toList();

        assertThat(results(new Balance().of(new Balance.Inputs(tasks, Optional.of(0.3), Optional.empty(), 5)))
                        .count())
                .isEqualTo(1);
        assertThat(results(new Balance().of(new Balance.Inputs(tasks, Optional.of(0.299999), Optional.empty(), 5)))
                        .count())
                .isEqualTo(2);
    }

    private static long[] times() {
        return JACKSON.stream()
                .mapToLong(task -> Math.round(task.minutes().get(0)))
                .toArray();
    }

    private static Balance.Inputs inputs(Optional<Double> taktMinutes, Optional<Integer> stations) {
        return new Balance.Inputs(pieces(), taktMinutes, stations, LIMIT_S);
    }

    private static List<Balance.Piece> pieces() {
        return JACKSON.stream()
                .map(task -> new Balance.Piece(task.id(), task.minutes().get(0), task.after()))
                .toList();
    }

    private static Found find(List<Task> tasks, Aim aim) {
        return Search.of(Work.of(tasks), aim).orElseThrow().find(progress -> {});
    }
}

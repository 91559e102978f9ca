package wainbook.engineering.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against a second exact method, and against what must hold for any line. */
class BalanceOfRandomGraphsTest {

    private static final int GRAPHS = 120;
    private static final double LIMIT_S = 20;

    @Test
    void a_second_exact_method_finds_as_few_stations() {
        var random = new SplittableRandom(20_261_126);
        for (int i = 0; i < GRAPHS; i++) {
            List<Task> tasks = graph(random, 3 + random.nextInt(9));
            int takt = 20 + random.nextInt(30);
            Found found = find(tasks, Aim.takt(takt, tasks.size(), LIMIT_S));

            assertThat(found.proven()).isTrue();
            assertThat(found.count()).as("%s in %s", tasks, takt).isEqualTo(new ClosedSets(tasks).fewest(takt));
        }
    }

    @Test
    void a_second_exact_method_finds_as_short_a_cycle() {
        var random = new SplittableRandom(20_261_127);
        for (int i = 0; i < GRAPHS; i++) {
            List<Task> tasks = graph(random, 3 + random.nextInt(8));
            int stations = 1 + random.nextInt(6);
            Found found = find(tasks, Aim.stations(stations, LIMIT_S));

            assertThat(found.proven()).isTrue();
            assertThat(found.best()).as("%s at %s", tasks, stations).isEqualTo((double)
                    new ClosedSets(tasks).shortest(stations));
        }
    }

    @Test
    void the_quick_rule_and_the_bounds_enclose_the_answer() {
        var random = new SplittableRandom(20_261_128);
        for (int i = 0; i < GRAPHS; i++) {
            List<Task> tasks = graph(random, 4 + random.nextInt(8));
            int takt = 20 + random.nextInt(20);
            Ticks ticks = Ticks.of(Work.of(tasks), DoubleStream.of(takt));
            int best = new ClosedSets(tasks).fewest(takt);
            int quick = PositionalWeight.count(
                    new PositionalWeight(ticks, Precedence.of(tasks).orElseThrow())
                            .stations(takt)
                            .orElseThrow());

            assertThat(Bounds.stations(ticks.rows()[0], takt)).isLessThanOrEqualTo(best);
            assertThat(quick).isGreaterThanOrEqualTo(best);
        }
    }

    @Test
    void a_longer_takt_never_needs_more_stations_and_more_stations_never_a_longer_cycle() {
        List<Task> tasks = graph(new SplittableRandom(7), 14);
        List<Integer> counts = IntStream.rangeClosed(20, 60)
                .mapToObj(takt -> find(tasks, Aim.takt(takt, 14, LIMIT_S).then(Aim.Then.ANY, Map.of())))
                .map(Found::count)
                .toList();
        List<Double> cycles = IntStream.rangeClosed(1, 14)
                .mapToObj(
                        stations -> find(tasks, Aim.stations(stations, LIMIT_S).then(Aim.Then.ANY, Map.of())))
                .map(Found::best)
                .toList();

        assertThat(counts).isSortedAccordingTo((one, other) -> other - one);
        assertThat(cycles).isSortedAccordingTo((one, other) -> Double.compare(other, one));
    }

    @Test
    void the_same_question_has_the_same_answer() {
        List<Task> tasks = graph(new SplittableRandom(8), 18);

        assertThat(IntStream.range(0, 3)
                        .mapToObj(again -> find(tasks, Aim.stations(4, LIMIT_S)).placed())
                        .distinct())
                .hasSize(1);
    }

    @Test
    void the_smoothest_is_the_smoothest_of_all_that_can_be_named() {
        var random = new SplittableRandom(9);
        for (int i = 0; i < 30; i++) {
            List<Task> tasks = graph(random, 6);
            Found found = find(tasks, Aim.stations(3, LIMIT_S));

            assertThat(found.chosen()).isTrue();
            assertThat(squares(found.loadMinutes())).isEqualTo(leastSquares(tasks, found.best()));
        }
    }

    @Test
    void a_search_that_is_stopped_tells_what_it_has_and_proves_no_more_than_the_bound() {
        List<Task> tasks = Graphs.read("WARNECKE.IN2");
        Search search = Search.of(Work.of(tasks), Aim.stations(9, LIMIT_S)).orElseThrow();
        search.stop();

        Found found = search.find(progress -> {});

        assertThat(found.placed()).isPresent();
        assertThat(found.proven()).isFalse();
        assertThat(found.best()).isGreaterThan(172);
        assertThat(found.lowerBound()).isEqualTo(172);
    }

    private static double leastSquares(List<Task> tasks, double cycle) {
        Precedence precedence = Precedence.of(tasks).orElseThrow();
        return IntStream.range(0, 729)
                .mapToObj(code -> IntStream.range(0, 6)
                        .map(task -> code / (int) Math.pow(3, task) % 3)
                        .toArray())
                .filter(placed -> precedence.arcs().stream().allMatch(arc -> placed[arc.first()] <= placed[arc.then()]))
                .map(placed -> IntStream.range(0, 3)
                        .mapToObj(place -> IntStream.range(0, 6)
                                .filter(task -> placed[task] == place)
                                .mapToDouble(task -> tasks.get(task).minutes().get(0))
                                .sum())
                        .toList())
                .filter(loads -> loads.stream().allMatch(load -> load <= cycle))
                .mapToDouble(BalanceOfRandomGraphsTest::squares)
                .min()
                .orElseThrow();
    }

    private static double squares(List<Double> loads) {
        return loads.stream().mapToDouble(load -> load * load).sum();
    }

    private static Found find(List<Task> tasks, Aim aim) {
        return Search.of(Work.of(tasks), aim).orElseThrow().find(progress -> {});
    }

    private static List<Task> graph(SplittableRandom random, int size) {
        return IntStream.range(0, size)
                .mapToObj(task -> Task.of(
                        "t" + task,
                        1 + random.nextInt(20),
                        IntStream.range(0, task)
                                .filter(first -> random.nextInt(4) == 0)
                                .mapToObj(first -> "t" + first)
                                .toList()))
                .toList();
    }
}

package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.SerialLine;
import wainbook.engineering.flow.SerialLine.Results;
import wainbook.engineering.flow.SerialLine.Station;
import wainbook.engineering.flow.simulation.Chain;
import wainbook.engineering.flow.simulation.Draws;
import wainbook.engineering.flow.simulation.Law;
import wainbook.engineering.flow.simulation.LineChain;
import wainbook.engineering.flow.simulation.Passage;
import wainbook.engineering.flow.simulation.WorkTime;

/**
 * Lines of stations in series whose throughput is known exactly. G. C. Hunt, 1956, for exponential work without places (from
 * memory: 2/3, 22/39, 0.5148); the other values by a Markov chain, which is solved here a second time; and the simulation held
 * against both, within three standard errors of its replications.
 */
class SerialLineTest {

    private static final int REPLICATIONS = 20;
    private static final double EXACT = 1e-9;

    @ParameterizedTest
    @CsvSource({
        "2, 0, 0.666666666667, 3",
        "3, 0, 0.564102564103, 8",
        "4, 0, 0.514775489318, 21",
        "5, 0, 0.485798121569, 55",
        "11, 0, 0.423836304732, 17711"
    })
    void the_chain_of_exponential_work_without_places(int stations, int room, double throughput, int states) {
        double[] rates = DoubleStream.generate(() -> 1).limit(stations).toArray();
        Chain<LineChain.State> chain = LineChain.of(rates, new int[stations - 1], 1);

        assertThat(chain.leavings()).isCloseTo(throughput, within(EXACT));
        assertThat(chain.states()).isEqualTo(states);
    }

    @ParameterizedTest
    @CsvSource({
        "3, 1, 0.670466158321", "3, 2, 0.734016672140", "3, 3, 0.776711532515", "3, 4, 0.807485909721",
        "4, 1, 0.631152685377", "4, 2, 0.700712902300", "4, 3, 0.747709511829", "4, 4, 0.781776022408",
        "5, 2, 0.680489477417", "5, 3, 0.729947941022"
    })
    void the_chain_of_exponential_work_with_places(int stations, int room, double throughput) {
        assertThat(LineChain.throughput(stations, room, 1)).isCloseTo(throughput, within(EXACT));
    }

    @ParameterizedTest
    @CsvSource({"2, 2, 0.727272727273", "3, 2, 0.640408500482", "4, 2, 0.597706858135", "3, 4, 0.713999413689"})
    void the_chain_of_work_in_phases(int stations, int phases, double throughput) {
        assertThat(LineChain.throughput(stations, 0, phases)).isCloseTo(throughput, within(EXACT));
    }

    @Test
    void the_chain_of_unequal_lines_and_places() {
        int[] none = {0, 0};

        assertThat(LineChain.throughput(new double[] {1, 0.5, 1}, none, 1)).isCloseTo(0.394009216590, within(EXACT));
        assertThat(LineChain.throughput(new double[] {0.5, 1, 1}, none, 1)).isCloseTo(0.403940886700, within(EXACT));
        assertThat(LineChain.throughput(new double[] {1, 1, 0.5}, none, 1)).isCloseTo(0.403940886700, within(EXACT));
        assertThat(LineChain.throughput(new double[] {1, 1, 1}, new int[] {1, 0}, 1))
                .isCloseTo(46.0 / 75, within(EXACT));
        assertThat(LineChain.throughput(new double[] {1, 1, 1}, new int[] {0, 1}, 1))
                .isCloseTo(46.0 / 75, within(EXACT));
    }

    /** Two stations of exponential work with b places are the queue M/M/1 with room for b + 2: Th = μ₂ (1 − (1−r)/(1−r^(b+3))). */
    @ParameterizedTest
    @CsvSource({"0, 0.857142857143", "1, 0.933333333333", "2, 0.967741935484"})
    void two_stations_by_formula_by_chain_and_by_simulation(int room, double throughput) {
        double formula = 1 - (1 - 2.0) / (1 - Math.pow(2, room + 3.0));

        assertThat(formula).isCloseTo(throughput, within(1e-12));
        assertThat(LineChain.throughput(new double[] {2, 1}, new int[] {room}, 1))
                .isCloseTo(formula, within(EXACT));
        agrees(line(List.of(exponential(0.5), exponential(1)), List.of(room), 31), formula);
    }

    @ParameterizedTest
    @CsvSource({
        "2, 0, 0.666666666667", "3, 0, 0.564102564103", "4, 0, 0.514775489318", "5, 0, 0.485798121569",
        "11, 0, 0.423836304732", "3, 1, 0.670466158321", "4, 2, 0.700712902300", "5, 3, 0.729947941022"
    })
    void the_simulation_of_exponential_work_agrees_with_the_chain(int stations, int room, double throughput) {
        agrees(
                line(Collections.nCopies(stations, exponential(1)), Collections.nCopies(stations - 1, room), 7),
                throughput);
    }

    @Test
    void the_simulation_of_unequal_lines_agrees_with_the_chain() {
        agrees(line(List.of(exponential(1), exponential(2), exponential(1)), List.of(0, 0), 11), 0.394009216590);
        agrees(line(List.of(exponential(2), exponential(1), exponential(1)), List.of(0, 0), 12), 0.403940886700);
        agrees(line(List.of(exponential(1), exponential(1), exponential(2)), List.of(0, 0), 13), 0.403940886700);
        agrees(line(List.of(exponential(1), exponential(1), exponential(1)), List.of(1, 0), 14), 46.0 / 75);
        agrees(line(List.of(exponential(1), exponential(1), exponential(1)), List.of(0, 1), 15), 46.0 / 75);
    }

    /** Two stations without a place pass one vehicle on every max(S₁, S₂), whatever the law: Th = 1 / E[max]. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.946761661589", "0.25, 0.878567467125", "0.5, 0.792620222910", "1, 0.692549156545"})
    void two_stations_of_lognormal_work(double cv, double throughput) {
        double sigma = Math.sqrt(Math.log(1 + cv * cv));
        double formula = 1 / (2 * new NormalDistribution().cumulativeProbability(sigma / Math.sqrt(2)));

        assertThat(formula).isCloseTo(throughput, within(1e-10));
        agrees(line(Collections.nCopies(2, lognormal(cv)), List.of(0), 17), throughput);
    }

    @Test
    void two_stations_of_uniform_work_from_nought_to_two() {
        var uniform = new Station(Law.UNIFORM, 1, Optional.empty(), 1);

        agrees(line(List.of(uniform, uniform), List.of(0), 19), 0.75);
    }

    /** Shares of time at three equal stations of exponential work: 22/39 at work, 17/39, 9/39 and 8/39 waiting. */
    @Test
    void shares_of_time() {
        Results found = line(Collections.nCopies(3, exponential(1)), List.of(0, 0), 23);
        double near = 0.004;

        assertThat(found.utilisation()).allSatisfy(share -> assertThat(share).isCloseTo(22.0 / 39, within(near)));
        assertThat(found.blocked().get(0)).isCloseTo(17.0 / 39, within(near));
        assertThat(found.blocked().get(1)).isCloseTo(9.0 / 39, within(near));
        assertThat(found.starved().get(1)).isCloseTo(8.0 / 39, within(near));
        assertThat(found.starved().get(2)).isCloseTo(17.0 / 39, within(near));
        assertThat(found.starved().get(0)).isZero();
        assertThat(found.blocked().get(2)).isZero();
    }

    /** One station of rate 2, then two of rate 1 side by side: 10/7 if they may overtake, 90/77 in order, as here. */
    @Test
    void stations_side_by_side_keep_the_order() {
        assertThat(sideBySide(false)).isCloseTo(10.0 / 7, within(EXACT));
        assertThat(sideBySide(true)).isCloseTo(90.0 / 77, within(EXACT));

        var two = new Station(Law.EXPONENTIAL, 1, Optional.empty(), 2);
        Results found = line(List.of(exponential(0.5), two), List.of(0), 29);
        agrees(found, 90.0 / 77);
        assertThat(found.blocked().get(1)).isZero();
        assertThat(found.outOfTurn().get(1)).isPositive();
    }

    /** Worked by hand: three stations, four vehicles. */
    @Test
    void the_recursion_by_hand() {
        double[][] left = passed(new int[] {0, 0}, new double[][] {{3, 4, 2}, {5, 2, 3}, {2, 6, 1}, {4, 3, 5}});

        assertThat(left[0]).containsExactly(3, 8, 10, 16);
        assertThat(left[1]).containsExactly(7, 10, 16, 19);
        assertThat(left[2]).containsExactly(9, 13, 17, 24);
        double[][] roomier = passed(new int[] {1, 1}, new double[][] {{3, 4, 2}, {5, 2, 3}, {2, 6, 1}, {4, 3, 5}});
        assertThat(roomier[0]).containsExactly(3, 8, 10, 14);
        assertThat(roomier[1]).containsExactly(left[1]);
        assertThat(roomier[2]).containsExactly(left[2]);
    }

    /** Work of 4, 6 and 5 minutes: the first vehicle after their sum, each next one after the longest. */
    @Test
    void a_line_of_certain_times() {
        var found = results(new SerialLine()
                .of(new SerialLine.Inputs(List.of(certain(4), certain(6), certain(5)), List.of(0, 0), 10, 0, 1, 0)));

        assertThat(found.perHour()).isEqualTo(60 * 10.0 / 69);
        assertThat(found.perHourLow()).contains(found.perHour());
        var steady = results(new SerialLine()
                .of(new SerialLine.Inputs(List.of(certain(4), certain(6), certain(5)), List.of(0, 0), 100, 10, 3, 0)));
        assertThat(steady.perHour()).isEqualTo(10);
        assertThat(steady.utilisation()).containsExactly(4.0 / 6, 1.0, 5.0 / 6);
        assertThat(steady.blocked()).containsExactly(2.0 / 6, 0.0, 0.0);
        assertThat(steady.starved()).containsExactly(0.0, 0.0, 1.0 / 6);
    }

    /** A queue with arrivals at rate 0.8 and work of 1: on average 3.2 wait with exponential work, 1.6 with certain work. */
    @Test
    void a_queue_of_one_station() {
        agreesWith(waiting(WorkTime.of(Law.EXPONENTIAL, 1, 1)), 3.2);
        agreesWith(waiting(WorkTime.of(Law.DETERMINISTIC, 1, 0)), 1.6);
    }

    private static double[] waiting(WorkTime work) {
        WorkTime gap = WorkTime.of(Law.EXPONENTIAL, 1 / 0.8, 1);
        return IntStream.range(0, 100)
                .mapToDouble(replication -> {
                    long key = Draws.key(Draws.key(37), replication);
                    var queue = new Passage(new int[] {1}, new int[0]);
                    double arrival = 0;
                    double waited = 0;
                    int counted = 20_000;
                    double begun = 0;
                    for (int vehicle = 0; vehicle < 1000 + counted; vehicle++) {
                        long own = Draws.key(key, vehicle);
                        arrival += gap.minutes(Draws.uniform(Draws.key(own, 1)));
                        queue.next(arrival, new double[] {work.minutes(Draws.uniform(Draws.key(own, 2)))});
                        begun = vehicle < 1000 ? arrival : begun;
                        waited += vehicle < 1000 ? 0 : queue.begun(0) - queue.arrived(0);
                    }
                    return waited / (arrival - begun);
                })
                .toArray();
    }

    private static double sideBySide(boolean inOrder) {
        record State(int busy, boolean youngerDone, boolean blocked) {}
        return new Chain<>(new State(0, false, false), state -> {
                    Stream<Chain.Step<State>> first = state.blocked()
                            ? Stream.of()
                            : Stream.of(new Chain.Step<>(
                                    state.busy() == 2
                                            ? new State(2, state.youngerDone(), true)
                                            : new State(state.busy() + 1, false, false),
                                    2,
                                    0));
                    int movesUp = state.blocked() ? 1 : 0;
                    Stream<Chain.Step<State>> elder = state.busy() == 0
                            ? Stream.of()
                            : Stream.of(
                                    state.youngerDone()
                                            ? new Chain.Step<>(new State(movesUp, false, false), 1, 2)
                                            : new Chain.Step<>(
                                                    new State(state.busy() - 1 + movesUp, false, false), 1, 1));
                    Stream<Chain.Step<State>> younger = state.busy() < 2 || state.youngerDone()
                            ? Stream.of()
                            : Stream.of(
                                    inOrder
                                            ? new Chain.Step<>(new State(2, true, state.blocked()), 1, 0)
                                            : new Chain.Step<>(new State(1 + movesUp, false, false), 1, 1));
                    return Stream.of(first, elder, younger).flatMap(one -> one).toList();
                })
                .leavings();
    }

    /** Leavings by stage and vehicle. */
    private static double[][] passed(int[] rooms, double[][] work) {
        var passage = new Passage(new int[] {1, 1, 1}, rooms);
        double[][] left = new double[3][work.length];
        for (int vehicle = 0; vehicle < work.length; vehicle++) {
            passage.next(0, work[vehicle]);
            for (int stage = 0; stage < 3; stage++) {
                left[stage][vehicle] = passage.left(stage);
            }
        }
        return left;
    }

    private static Results line(List<Station> stations, List<Integer> rooms, long seed) {
        return results(new SerialLine().of(new SerialLine.Inputs(stations, rooms, 10_000, 1000, REPLICATIONS, seed)));
    }

    /** Within three standard errors of the mean of the replications, which the interval gives away. */
    private static void agrees(Results found, double perMinute) {
        double factor = new TDistribution(REPLICATIONS - 1.0).inverseCumulativeProbability(0.975);
        double error = (found.perHourHigh().orElseThrow() - found.perHour()) / factor;

        assertThat(found.perHour()).isCloseTo(60 * perMinute, within(3 * error));
        assertThat(error).isLessThan(0.005 * 60 * perMinute);
    }

    private static void agreesWith(double[] replications, double exact) {
        double mean = Arrays.stream(replications).average().orElseThrow();
        double s = Math.sqrt(Arrays.stream(replications)
                        .map(one -> (one - mean) * (one - mean))
                        .sum()
                / (replications.length - 1));
        assertThat(mean).isCloseTo(exact, within(3 * s / Math.sqrt(replications.length)));
    }

    private static Station exponential(double mean) {
        return new Station(Law.EXPONENTIAL, mean, Optional.empty(), 1);
    }

    private static Station lognormal(double cv) {
        return new Station(Law.LOGNORMAL, 1, Optional.of(cv), 1);
    }

    private static Station certain(double minutes) {
        return new Station(Law.DETERMINISTIC, minutes, Optional.empty(), 1);
    }
}

package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.simulation.Chain;
import wainbook.engineering.flow.simulation.Draws;
import wainbook.engineering.flow.simulation.Law;
import wainbook.engineering.flow.simulation.LineChain;
import wainbook.engineering.flow.simulation.WorkTime;

/**
 * Lines that move all at once, and lines of two machines that fail. The forecast has neither: a vehicle moves when there is room,
 * and a station that is down is off its calendar. What is checked here are the random numbers and times of the simulation, and the
 * chain by which {@link SerialLineTest} judges it.
 */
class MovingTogetherAndFailingLinesTest {

    private static final double EXACT = 1e-9;
    private static final int MOVES = 200_000;

    /** All wait for the slowest: one move on E[max of N]; of exponential work 1 / (1 + 1/2 + … + 1/N). */
    @ParameterizedTest
    @CsvSource({
        "2, 0.666666666667",
        "3, 0.545454545455",
        "4, 0.48",
        "11, 0.331139276798",
    })
    void a_line_that_moves_all_at_once(int stations, double throughput) {
        var slowest = new Chain<Integer>(
                stations, busy -> List.of(new Chain.Step<>(busy == 1 ? stations : busy - 1, busy, busy == 1 ? 1 : 0)));
        assertThat(slowest.leavings()).isCloseTo(throughput, within(EXACT));

        double[] moves = moves(stations);
        double mean = Arrays.stream(moves).average().orElseThrow();
        double variance =
                Arrays.stream(moves).map(one -> (one - mean) * (one - mean)).sum() / (MOVES - 1);
        assertThat(mean).isCloseTo(1 / throughput, within(3 * Math.sqrt(variance / MOVES)));
        if (stations <= 4) {
            assertThat(throughput).isLessThanOrEqualTo(LineChain.throughput(stations, 0, 1) + EXACT);
        }
    }

    private static double[] moves(int stations) {
        WorkTime work = WorkTime.of(Law.EXPONENTIAL, 1, 1);
        long key = Draws.key(41);
        return IntStream.range(0, MOVES)
                .mapToDouble(move -> IntStream.range(0, stations)
                        .mapToDouble(station -> work.minutes(Draws.uniform(Draws.key(Draws.key(key, move), station))))
                        .max()
                        .orElseThrow())
                .toArray();
    }

    /**
     * Two machines that are up in a slot with p₁ and p₂, with N places: Th = p₂ (1 − Q), Q = (1−p₁)(1−a)/(1 − (p₁/p₂) aᴺ),
     * a = p₁(1−p₂)/(p₂(1−p₁)), for equal machines (1−p)/(N+1−p). Formula from memory of J. Li and S. M. Meerkov, solved here a
     * second time as a chain.
     */
    @ParameterizedTest
    @CsvSource({
        "0.9, 0.9, 1, 0.818181818182",
        "0.9, 0.9, 5, 0.882352941176",
        "0.8, 0.8, 3, 0.75",
        "0.9, 0.8, 2, 0.778702163062",
        "0.8, 0.9, 2, 0.778702163062",
        "0.95, 0.9, 4, 0.897495802589"
    })
    void two_machines_that_are_up_by_chance(double p1, double p2, int places, double throughput) {
        assertThat(p2 * (1 - empty(p1, p2, places))).isCloseTo(throughput, within(1e-10));

        var line = new Chain<Integer>(0, stored -> {
            var steps = new ArrayList<Chain.Step<Integer>>();
            for (int up = 0; up < 4; up++) {
                boolean takes = up >= 2 && stored > 0;
                boolean puts = up % 2 == 1 && (stored < places || takes);
                double chance = (up % 2 == 1 ? p1 : 1 - p1) * (up >= 2 ? p2 : 1 - p2);
                steps.add(new Chain.Step<>(stored + (puts ? 1 : 0) - (takes ? 1 : 0), chance, takes ? 1 : 0));
            }
            return steps;
        });
        assertThat(line.leavings()).isCloseTo(throughput, within(1e-10));
    }

    private static double empty(double p1, double p2, int places) {
        if (p1 == p2) {
            return (1 - p1) / (places + 1 - p1);
        }
        double a = p1 * (1 - p2) / (p2 * (1 - p1));
        return (1 - p1) * (1 - a) / (1 - p1 / p2 * Math.pow(a, places));
    }

    /**
     * Two machines with work of one slot that fail with p while they can work and are mended with r, with N places; machines change
     * first, then what is stored. From memory of J. A. Buzacott, 1967, and S. B. Gershwin, 1994; the values are those of a chain,
     * solved here a second time.
     */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.01, 0.1, 0.01, 4, 0.840936136454",
        "0.1, 0.01, 0.1, 0.01, 10, 0.856174930705",
        "0.1, 0.01, 0.1, 0.01, 20, 0.870540722459",
        "0.14, 0.1, 0.2, 0.1, 4, 0.486438303515",
        "0.14, 0.1, 0.2, 0.1, 10, 0.530844668970"
    })
    void two_machines_that_fail(double r1, double p1, double r2, double p2, int places, double throughput) {
        record State(int stored, boolean firstUp, boolean secondUp) {}
        var line = new Chain<>(new State(0, true, true), state -> {
            var steps = new ArrayList<Chain.Step<State>>();
            boolean fed = state.stored() > 0;
            boolean roomy = state.stored() < places;
            for (boolean first : new boolean[] {true, false}) {
                for (boolean second : new boolean[] {true, false}) {
                    double chance =
                            turns(state.firstUp(), first, roomy, r1, p1) * turns(state.secondUp(), second, fed, r2, p2);
                    if (chance > 0) {
                        int stored = state.stored() + (first && roomy ? 1 : 0) - (second && fed ? 1 : 0);
                        steps.add(new Chain.Step<>(new State(stored, first, second), chance, second && fed ? 1 : 0));
                    }
                }
            }
            return steps;
        });
        assertThat(line.leavings()).isCloseTo(throughput, within(EXACT));
        assertThat(throughput).isBetween(1 / (1 + p1 / r1 + p2 / r2), Math.min(r1 / (r1 + p1), r2 / (r2 + p2)));
    }

    private static double turns(boolean isUp, boolean willBeUp, boolean canWork, double r, double p) {
        double up = isUp ? 1 - (canWork ? p : 0) : r;
        return willBeUp ? up : 1 - up;
    }
}

package wainbook.engineering.flow.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for any line and any times: seeded, hundreds of them. Whole minutes, so that equal means equal. */
class PassageLawsTest {

    private static final int CASES = 200;

    /** Stations, places and work of one line. */
    private static final class Line {

        private final int[] servers;
        private final int[] rooms;
        private final double[][] work;

        Line(int[] servers, int[] rooms, double[][] work) {
            this.servers = servers;
            this.rooms = rooms;
            this.work = work;
        }

        int[] servers() {
            return servers;
        }

        int[] rooms() {
            return rooms;
        }

        double[][] work() {
            return work;
        }

        static Line any(SplittableRandom random, int mostServers) {
            int stages = random.nextInt(1, 7);
            int vehicles = random.nextInt(1, 30);
            double[][] work = new double[vehicles][stages];
            for (double[] one : work) {
                Arrays.setAll(one, stage -> random.nextInt(0, 100));
            }
            return new Line(
                    random.ints(stages, 1, mostServers + 1).toArray(),
                    random.ints(stages - 1, 0, 4).toArray(),
                    work);
        }

        /** Arriving and leaving of each vehicle at each stage. */
        double[][][] passed() {
            var passage = new Passage(servers, rooms);
            double[][][] times = new double[work.length][servers.length][];
            for (int vehicle = 0; vehicle < work.length; vehicle++) {
                passage.next(0, work[vehicle]);
                for (int stage = 0; stage < servers.length; stage++) {
                    times[vehicle][stage] = new double[] {passage.begun(stage), passage.left(stage)};
                }
            }
            return times;
        }

        double makespan() {
            return passed()[work.length - 1][servers.length - 1][1];
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void longer_work_never_lets_anything_leave_earlier(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = Line.any(random, 3);
            double[][][] before = line.passed();
            line.work()[random.nextInt(line.work().length)][random.nextInt(line.servers().length)] +=
                    random.nextInt(1, 50);

            neverEarlier(line.passed(), before);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void a_faster_station_never_delays_a_vehicle(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = Line.any(random, 3);
            double[][][] before = line.passed();
            int stage = random.nextInt(line.servers().length);
            for (double[] work : line.work()) {
                work[stage] = Math.floor(0.9 * work[stage]);
            }

            neverEarlier(before, line.passed());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void one_place_more_never_lets_anything_leave_later(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = Line.any(random, 3);
            if (line.rooms().length > 0) {
                double[][][] before = line.passed();
                line.rooms()[random.nextInt(line.rooms().length)]++;

                neverEarlier(before, line.passed());
            }
        }
    }

    /** The same work from the other end, the last vehicle first, takes as long to the minute. */
    @ParameterizedTest
    @ValueSource(longs = {10, 11, 12})
    void a_line_turned_round_takes_as_long(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = Line.any(random, 1);
            int vehicles = line.work().length;
            int stages = line.servers().length;
            double[][] turned = new double[vehicles][stages];
            int[] rooms = new int[stages - 1];
            for (int stage = 0; stage < stages; stage++) {
                for (int vehicle = 0; vehicle < vehicles; vehicle++) {
                    turned[vehicle][stage] = line.work()[vehicles - 1 - vehicle][stages - 1 - stage];
                }
            }
            Arrays.setAll(rooms, room -> line.rooms()[stages - 2 - room]);

            assertThat(new Line(line.servers(), rooms, turned).makespan()).isEqualTo(line.makespan());
        }
    }

    /** Little: over a time that begins and ends with an empty line, mean stock · time is the sum of all times on the line. */
    @ParameterizedTest
    @ValueSource(longs = {13, 14, 15})
    void stock_is_throughput_by_time_on_the_line(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            double[][][] times = Line.any(random, 3).passed();
            int last = times[0].length - 1;
            int end = (int)
                    Arrays.stream(times).mapToDouble(one -> one[last][1]).max().orElseThrow();
            long stockMinutes = 0;
            for (int minute = 0; minute < end; minute++) {
                for (double[][] one : times) {
                    stockMinutes += one[0][0] <= minute && minute < one[last][1] ? 1 : 0;
                }
            }
            double onTheLine = Arrays.stream(times)
                    .mapToDouble(one -> one[last][1] - one[0][0])
                    .sum();

            assertThat((double) stockMinutes).isEqualTo(onTheLine);
        }
    }

    /** In their order, and never more of them between two stages than there are stations and places. */
    @ParameterizedTest
    @ValueSource(longs = {16, 17})
    void vehicles_keep_their_order_and_find_room(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Line line = Line.any(random, 3);
            double[][][] times = line.passed();
            for (int vehicle = 1; vehicle < times.length; vehicle++) {
                for (int stage = 0; stage < line.servers().length; stage++) {
                    assertThat(times[vehicle][stage][1]).isGreaterThanOrEqualTo(times[vehicle - 1][stage][1]);
                    int room = stage == 0 ? 0 : line.rooms()[stage - 1];
                    int before = vehicle - room - line.servers()[stage];
                    if (stage > 0 && before >= 0) {
                        assertThat(times[vehicle][stage - 1][1]).isGreaterThanOrEqualTo(times[before][stage][1]);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {18, 19})
    void the_shares_of_a_stage_make_one(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < 20; i++) {
            Line line = Line.any(random, 3);
            var times = Collections.nCopies(line.servers().length, WorkTime.of(Law.LOGNORMAL, 60, 0.3));
            Spell spell = Spell.of(times, line.servers(), line.rooms(), 5, 50, seed);

            assertThat(spell.stages())
                    .allSatisfy(
                            stage -> assertThat(stage.working() + stage.blocked() + stage.starved() + stage.outOfTurn())
                                    .isCloseTo(1, within(1e-12)));
        }
    }

    private static void neverEarlier(double[][][] later, double[][][] earlier) {
        for (int vehicle = 0; vehicle < later.length; vehicle++) {
            for (int stage = 0; stage < later[vehicle].length; stage++) {
                assertThat(later[vehicle][stage][1]).isGreaterThanOrEqualTo(earlier[vehicle][stage][1]);
            }
        }
    }
}

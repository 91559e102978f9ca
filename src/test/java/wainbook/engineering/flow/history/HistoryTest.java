package wainbook.engineering.flow.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pace;

class HistoryTest {

    private static final double CV = 0.3;

    @Test
    void plans_where_there_is_no_history() {
        Times times = new History(records(4, 60, 1), CV).times("bus", "S1", 90);

        assertThat(times.basis()).isEqualTo(new Basis(Basis.Ground.PLANNED, 4, 4));
        assertThat(times.minutes()).isEqualTo(Lognormal.ofMean(90, CV));
    }

    @Test
    void draws_the_kinds_own_times_where_there_are_twenty() {
        List<Finished> own = records(20, 60, 1);
        Times times = new History(own, CV).times("bus", "S1", 60);

        assertThat(times.basis().ground()).isEqualTo(Basis.Ground.OWN);
        double[] values = ((Minutes.Drawn) times.minutes()).values();
        double[] recorded = own.stream().mapToDouble(Finished::minutes).sorted().toArray();
        for (int i = 0; i < values.length; i++) {
            assertThat(values[i]).isCloseTo(recorded[i], within(1e-9));
        }
    }

    /** Nineteen trucks as planned, one bus of twice its plan: the bus' level goes a sixth of the way to its own. */
    @Test
    void borrows_from_the_stage_where_a_kind_has_few() {
        List<Finished> all = new ArrayList<>();
        for (int i = 0; i < 19; i++) {
            all.add(new Finished("T" + i, "truck", "S1", 60, 60));
        }
        all.add(new Finished("B", "bus", "S1", 200, 100));
        Times times = new History(all, CV).times("bus", "S1", 100);

        assertThat(times.basis()).isEqualTo(new Basis(Basis.Ground.POOLED, 1, 20));
        assertThat(times.minutes().at(0.5)).isCloseTo(100 * Math.pow(2, 1.0 / 6), within(1e-9));
        assertThat(new History(all, CV).times("van", "S1", 100).minutes().at(0.5))
                .isCloseTo(100, within(1e-9));
    }

    /** Vehicles with a factor of sd 0.2 and stages of 0.1 about it: found again, and put together as wide as they were. */
    @Test
    void tells_slow_vehicles_from_slow_stages() {
        var random = new SplittableRandom(3);
        List<Finished> all = new ArrayList<>();
        for (int vehicle = 0; vehicle < 200; vehicle++) {
            double factor = new Lognormal(1, 0.2).at(random.nextDouble());
            for (int stage = 0; stage < 10; stage++) {
                double minutes = 80 * factor * new Lognormal(1, 0.1).at(random.nextDouble());
                all.add(new Finished("V" + vehicle, "bus", "S" + stage, minutes, 80));
            }
        }
        var history = new History(all, CV);

        assertThat(history.spread().between()).isCloseTo(0.2, within(0.03));
        assertThat(history.spread().within()).isCloseTo(0.1, within(0.01));
        double[] drawn = ((Minutes.Drawn) history.times("bus", "S1", 80).minutes()).values();
        assertThat(Lognormal.fitted(IntStream.range(0, drawn.length)
                                .mapToObj(i -> drawn[i])
                                .toList())
                        .sigma())
                .isCloseTo(0.1, within(0.015));
        Pace slow =
                history.pace(List.of(new Finished("X", "bus", "S1", 120, 80), new Finished("X", "bus", "S2", 120, 80)));
        assertThat(slow.median()).isBetween(1.35, 1.5);
        assertThat(slow.sigma()).isLessThan(0.08);
        assertThat(history.pace(List.of()).sigma()).isEqualTo(history.spread().between());
    }

    @Test
    void sees_no_slow_vehicles_where_chance_would_do() {
        assertThat(new History(records(30, 60, 7), CV).spread().between()).isZero();
        assertThat(new History(records(30, 60, 7), CV).pace(List.of())).isEqualTo(Pace.USUAL);
    }

    private static List<Finished> records(int count, double planned, long seed) {
        var random = new SplittableRandom(seed);
        return IntStream.range(0, count)
                .mapToObj(one -> new Finished("V" + one, "bus", "S1", planned * random.nextDouble(0.7, 1.6), planned))
                .toList();
    }
}

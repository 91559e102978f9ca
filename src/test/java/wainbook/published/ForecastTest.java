package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Cause;

/**
 * The forecast of finish against cases worked out apart from it: conditional lognormal times by closed form, small lines by writing
 * down all equally likely draws, the recursion by hand, long lines by their known throughput.
 */
class ForecastTest {

    private static final Lognormal LAW = new Lognormal(100, 0.5);
    private static final List<Double> TEN = List.of(61.0, 74.0, 58.0, 90.0, 66.0, 70.0, 83.0, 120.0, 64.0, 77.0);

    @ParameterizedTest
    @CsvSource({
        "100, 0.5, 40.10821119, 127.60166085, 56.70592367",
        "150, 0.2087028734, 37.49277006, 126.77887203, 55.19468813",
        "200, 0.0828285190, 38.03618193, 131.38273197, 56.82621594"
    })
    void what_is_left_of_a_job_that_has_gone_on(double elapsed, double beyond, double median, double p90, double mean) {
        assertThat(LAW.beyond(elapsed)).isCloseTo(beyond, within(1e-9));
        assertThat(LAW.left(elapsed, 0.5)).isCloseTo(median, within(1e-6));
        assertThat(LAW.left(elapsed, 0.9)).isCloseTo(p90, within(1e-6));
        var other = new LogNormalDistribution(Math.log(100), 0.5);
        double survives = 1 - other.cumulativeProbability(elapsed);
        double closed = 100
                        * Math.exp(0.125)
                        * new NormalDistribution().cumulativeProbability(0.5 - Math.log(elapsed / 100) / 0.5)
                        / survives
                - elapsed;
        assertThat(closed).isCloseTo(mean, within(1e-6));
        assertThat(IntStream.range(0, 100_000)
                        .mapToDouble(i -> LAW.left(elapsed, (i + 0.5) / 100_000))
                        .average()
                        .orElseThrow())
                .isCloseTo(mean, within(0.01));
        for (double u = 0.05; u < 1; u += 0.1) {
            assertThat(LAW.left(elapsed, u))
                    .isCloseTo(other.inverseCumulativeProbability(1 - (1 - u) * survives) - elapsed, within(1e-6));
        }
    }

    @Test
    void the_chance_of_being_done_within_an_hour() {
        assertThat(1 - LAW.beyond(210) / LAW.beyond(150)).isCloseTo(0.6697645665, within(1e-9));
        assertThat(LAW.at(0.9)).isCloseTo(189.79527073, within(1e-7));
        assertThat(Lognormal.ofMean(113.31484531, Math.sqrt(Math.expm1(0.25))).medianMinutes())
                .isCloseTo(100, within(1e-6));
    }

    @Test
    void a_law_fitted_to_ten_times() {
        Lognormal fitted = Lognormal.fitted(TEN);

        assertThat(Math.log(fitted.medianMinutes())).isCloseTo(4.312236247812, within(1e-10));
        assertThat(fitted.sigma()).isCloseTo(0.216033028010, within(1e-10));
        assertThat(fitted.at(0.8)).isCloseTo(89.48349826, within(1e-6));
        assertThat(fitted.at(0.95)).isCloseTo(106.43973511, within(1e-6));
    }

    /** Five of the ten took longer than 72: what is left is one of 2, 5, 11, 18, 48. */
    @Test
    void what_is_left_by_the_history() {
        Minutes drawn = Minutes.Drawn.of(TEN);

        assertThat(IntStream.range(0, 5).mapToDouble(i -> drawn.left(72, (i + 0.5) / 5)))
                .containsExactly(2.0, 5.0, 11.0, 18.0, 48.0);
        assertThat(drawn.beyond(72)).isEqualTo(0.5);
        assertThat(drawn.left(80, 0.5)).isEqualTo(Lognormal.fitted(TEN).left(80, 0.5));
    }

    /**
     * V1 in the second stage with 10 or 40 left, V2 in the first with 20 or 30 left and 30 to do in the second, no place between: V2
     * finishes at 50, 60, 70 or 70.
     */
    @Test
    void two_vehicles_by_all_their_draws() {
        double[] finishes = Stream.of(10.0, 40.0)
                .flatMap(left -> Stream.of(20.0, 30.0)
                        .map(work -> Forecast.of(
                                        twoVehicles(new Minutes.Certain(left), new Minutes.Certain(work)),
                                        Effort.exactly(1, 1))
                                .of("V2")))
                .mapToDouble(outlook -> outlook.finish().median())
                .toArray();
        assertThat(finishes).containsExactly(50, 60, 70, 70);
        double blocked = Stream.of(10.0, 40.0)
                .flatMap(left -> Stream.of(20.0, 30.0)
                        .map(work -> Forecast.of(
                                        twoVehicles(new Minutes.Certain(left), new Minutes.Certain(work)),
                                        Effort.exactly(1, 1))
                                .of("V2")))
                .mapToDouble(outlook -> outlook.drivers().getOrDefault(Cause.PLACE, 0.0))
                .average()
                .orElseThrow();
        assertThat(DoubleStream.of(finishes).average()).hasValue(62.5);
        assertThat(blocked).isEqualTo(7.5);
    }

    @Test
    void two_vehicles_by_simulation() {
        Line line = twoVehicles(Minutes.Drawn.of(List.of(10.0, 40.0)), Minutes.Drawn.of(List.of(20.0, 30.0)));
        var forecast = Forecast.of(line, Effort.exactly(5, 10_000));
        var finish = forecast.of("V2").finish();

        assertThat(finish.sorted()).containsOnly(50, 60, 70);
        assertThat(finish.mean()).isCloseTo(62.5, within(3 * 8.3 / 100));
        assertThat(finish.by(60).share()).isCloseTo(0.5, within(3 * 0.5 / 100));
        assertThat(forecast.of("V2").drivers().get(Cause.PLACE)).isCloseTo(7.5, within(1.3));
    }

    /** Ten left of V1 in the third stage, 50 of V2 in the second, 20 of V3 in the first; V2 30 and V3 40 and 35 to come. */
    @Test
    void a_state_of_three_vehicles_by_hand() {
        List<Stage> stages = stages(3);
        var line = new Line(
                WorkingTime.always(),
                stages,
                List.of(
                        Vehicle.of("V1", new Whereabouts.AtWork(2, 0), visits(0, 0, 10)),
                        Vehicle.of("V2", new Whereabouts.AtWork(1, 0), visits(0, 50, 30)),
                        Vehicle.of("V3", new Whereabouts.AtWork(0, 0), visits(20, 40, 35))),
                List.of());
        var forecast = Forecast.of(line, Effort.exactly(1, 1));

        assertThat(forecast.vehicles()).extracting(one -> one.finish().median()).containsExactly(10.0, 80.0, 125.0);
        assertThat(forecast.of("V3").stages().get(0).outOf().median()).isEqualTo(50);
        assertThat(forecast.of("V3").drivers().get(Cause.PLACE)).isEqualTo(30);
    }

    /** Work of 4, 6 and 5 minutes: the tenth vehicle leaves after 15 + 9 · 6. */
    @Test
    void a_line_of_certain_times() {
        var line = new Line(
                WorkingTime.always(),
                stages(3),
                IntStream.rangeClosed(1, 10)
                        .mapToObj(one -> Vehicle.of("V" + one, new Whereabouts.Waiting(0), visits(4, 6, 5)))
                        .toList(),
                List.of());
        var forecast = Forecast.of(line, Effort.exactly(1, 3));

        for (int vehicle = 1; vehicle <= 10; vehicle++) {
            var finish = forecast.of("V" + vehicle).finish();
            assertThat(finish.sorted()).containsOnly(15 + (vehicle - 1) * 6);
        }
    }

    /** Two stations of lognormal work without a place, cv 0.25: one vehicle every 1 / 0.878567467125 of the mean. */
    @Test
    void a_long_line_makes_what_is_known_exactly() {
        int vehicles = 400;
        Visit visit = Visit.of(Lognormal.ofMean(100, 0.25));
        var line = new Line(
                WorkingTime.always(),
                stages(2),
                IntStream.range(0, vehicles)
                        .mapToObj(
                                one -> Vehicle.of("V" + one, new Whereabouts.Waiting(0), Collections.nCopies(2, visit)))
                        .toList(),
                List.of());
        var forecast = Forecast.of(line, Effort.exactly(3, 500));
        double early = forecast.of("V99").finish().mean();
        double late = forecast.of("V399").finish().mean();

        double standardError = forecast.of("V399")
                        .finish()
                        .laterThan(forecast.of("V99").finish())
                        .halfWidth()
                / 1.96;
        assertThat((late - early) / 300).isCloseTo(100 / 0.878567467125, within(3 * standardError / 300));
        assertThat(standardError / 300).isLessThan(0.1);
    }

    private static Line twoVehicles(Minutes left, Minutes work) {
        return new Line(
                WorkingTime.always(),
                stages(2),
                List.of(
                        Vehicle.of("V1", new Whereabouts.AtWork(1, 0), List.of(Visit.passingThrough(), Visit.of(left))),
                        Vehicle.of(
                                "V2",
                                new Whereabouts.AtWork(0, 0),
                                List.of(Visit.of(work), Visit.of(new Minutes.Certain(30))))),
                List.of());
    }

    private static List<Stage> stages(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(one -> Stage.of("S" + one, WorkingTime.always()))
                .toList();
    }

    private static List<Visit> visits(double... minutes) {
        return DoubleStream.of(minutes)
                .mapToObj(one -> Visit.of(new Minutes.Certain(one)))
                .toList();
    }
}

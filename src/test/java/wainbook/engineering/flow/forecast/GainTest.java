package wainbook.engineering.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Lognormal;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/**
 * What a line gains when something ends. In certain minutes each figure can be found with a pencil: with the hold, the first vehicle
 * finishes at 140, the one behind it gets in then and finishes at 200, the last at 260; without it at 40, 100 and 160.
 */
class GainTest {

    private static final WorkingTime ALWAYS = WorkingTime.always();
    private static final Effort ONE = Effort.exactly(1, 2);

    @Test
    void a_hold_that_blocks_two_vehicles_costs_the_lateness_of_all_three() {
        Gain gain = gain(100, 150, 300);

        assertThat(gain.lateMinutes().mean()).isEqualTo(40 + 50);
        assertThat(gain.lateMinutes().halfWidth()).isZero();
        assertThat(gain.shown()).isTrue();
        assertThat(gain.earlier()).isEqualTo(3);
    }

    @Test
    void where_nobody_is_late_nothing_is_saved_though_all_finish_earlier() {
        Gain gain = gain(1000, 1000, 1000);

        assertThat(gain.lateMinutes().mean()).isZero();
        assertThat(gain.shown()).isFalse();
        assertThat(gain.earlier()).isEqualTo(3);
    }

    @Test
    void nothing_changed_gains_nothing() {
        Line line = line(true, 100, 150, 300);
        Gain gain = Gain.of(line, line, ONE);

        assertThat(gain.lateMinutes().mean()).isZero();
        assertThat(gain.earlier()).isZero();
        assertThat(gain.shown()).isFalse();
    }

    @Test
    void lateness_counts_minutes_in_which_the_last_stage_works() {
        var nights = WorkingTime.of(List.of(new Interval(0, 100), new Interval(1000, 1100)));
        Line line = new Line(
                nights,
                List.of(Stage.of("A", nights)),
                List.of(vehicle("V", new Whereabouts.AtWork(0, 0), 150).promisedFor(90)),
                List.of());

        assertThat(Lateness.of(line, Forecast.of(line, ONE)).meanMinutes()).isEqualTo(10 + 50);
    }

    /** A vehicle drawn with the same numbers in both: the difference is known far better than either. */
    @Test
    void common_numbers_make_the_difference_sharp() {
        Vehicle vehicle = Vehicle.of("V", new Whereabouts.AtWork(0, 0), List.of(Visit.of(Lognormal.ofMean(100, 0.5))))
                .promisedFor(0);
        Line before = new Line(
                ALWAYS,
                List.of(Stage.of("A", ALWAYS)),
                List.of(vehicle.withHold(new Hold(true, new Hold.At(30)))),
                List.of());
        Gain gain = Gain.of(before, before.with(vehicle.released()), Effort.exactly(7, 1000));

        assertThat(gain.lateMinutes().mean()).isCloseTo(30, within(1e-9));
        assertThat(gain.lateMinutes().halfWidth()).isLessThan(1e-9);
    }

    @Test
    void vehicles_finished_by_a_minute_are_counted_in_both() {
        Forecast with = Forecast.of(line(true, 100, 150, 300), ONE);
        Forecast without = Forecast.of(line(false, 100, 150, 300), ONE);

        assertThat(Finished.by(with, 150).mean()).isEqualTo(1);
        assertThat(Finished.by(without, 150).mean()).isEqualTo(2);
        assertThat(Finished.by(without, 150).moreThan(Finished.by(with, 150)).mean())
                .isEqualTo(1);
    }

    private static Gain gain(double... promised) {
        return Gain.of(line(true, promised), line(false, promised), ONE);
    }

    private static Line line(boolean held, double... promised) {
        Vehicle first = vehicle("1", new Whereabouts.AtWork(1, 20), 0, 60).promisedFor(promised[0]);
        return new Line(
                ALWAYS,
                List.of(Stage.of("A", ALWAYS), Stage.of("B", ALWAYS)),
                List.of(
                        held ? first.withHold(new Hold(true, new Hold.At(100))) : first,
                        vehicle("2", new Whereabouts.Signed(0), 0, 60).promisedFor(promised[1]),
                        vehicle("3", new Whereabouts.Waiting(0), 30, 60).promisedFor(promised[2])),
                List.of());
    }

    private static Vehicle vehicle(String name, Whereabouts at, double... work) {
        return Vehicle.of(
                name,
                at,
                Arrays.stream(work)
                        .mapToObj(minutes -> Visit.of(new Minutes.Certain(minutes)))
                        .toList());
    }
}

package wainbook.engineering.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Pulses;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/** A line of two stages that moves every hundred minutes, in certain minutes. */
class PacedLineTest {

    private static final WorkingTime ALWAYS = WorkingTime.always();
    private static final Pulses HUNDREDS =
            Pulses.at(IntStream.rangeClosed(1, 50).mapToDouble(i -> 100 * i).toArray(), 4);

    @Test
    void a_vehicle_comes_with_a_pulse_stays_for_one_and_finishes_when_its_last_stage_is_done() {
        Forecast forecast = forecast(1, vehicle("1", new Whereabouts.Waiting(0), 60, 60));

        assertThat(finish(forecast, "1")).isEqualTo(260);
    }

    @Test
    void one_that_is_not_ready_moves_when_it_is_and_the_next_comes_then() {
        Forecast forecast = forecast(
                1, vehicle("1", new Whereabouts.Waiting(0), 120, 60), vehicle("2", new Whereabouts.Waiting(0), 60, 60));

        assertThat(finish(forecast, "1")).isEqualTo(220 + 60);
        // It comes at 220 and stays until the pulse at 300.
        assertThat(finish(forecast, "2")).isEqualTo(300 + 60);
    }

    @Test
    void at_a_stage_of_two_stations_vehicles_stay_for_two_pulses() {
        Forecast forecast = forecast(2, vehicle("1", new Whereabouts.Waiting(0), 60, 60));

        assertThat(finish(forecast, "1")).isEqualTo(300 + 60);
    }

    @Test
    void pulses_that_a_vehicle_has_stood_for_count() {
        Vehicle there = vehicle("1", new Whereabouts.AtWork(0, 10), 60, 60);

        assertThat(finish(forecast(2, there), "1")).isEqualTo(200 + 60);
        assertThat(finish(forecast(2, there.stood(1)), "1")).isEqualTo(100 + 60);
        assertThat(finish(forecast(2, there.stood(2)), "1")).isEqualTo(50 + 60);
    }

    @Test
    void at_the_last_stage_nothing_is_waited_for() {
        assertThat(finish(forecast(1, vehicle("1", new Whereabouts.AtWork(1, 10), 0, 60)), "1"))
                .isEqualTo(50);
    }

    @Test
    void whoever_comes_a_little_early_came_with_the_pulse() {
        assertThat(HUNDREDS.after(197, 1)).isEqualTo(300);
        assertThat(HUNDREDS.after(195, 1)).isEqualTo(200);
        assertThat(HUNDREDS.after(4999, 2)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(Pulses.none().after(12, 1)).isEqualTo(12);
    }

    private static Forecast forecast(int stations, Vehicle... vehicles) {
        return Forecast.of(
                new Line(
                                ALWAYS,
                                List.of(Stage.of("A", ALWAYS).withStations(stations), Stage.of("B", ALWAYS)),
                                List.of(vehicles),
                                List.of())
                        .withPulses(HUNDREDS),
                Effort.exactly(1, 1));
    }

    private static double finish(Forecast forecast, String vehicle) {
        return forecast.of(vehicle).finish().median();
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

package wainbook.engineering.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Appointment;
import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Cause;
import wainbook.engineering.flow.forecast.outcome.Outlook;

/** What befalls single vehicles, in certain minutes: each figure can be found with a pencil. */
class HoldsBaysAppointmentsTest {

    private static final WorkingTime ALWAYS = WorkingTime.always();

    @Test
    void a_hold_stops_work_or_the_gate_until_it_is_released() {
        Vehicle at = vehicle("V", new Whereabouts.AtWork(0, 20), 60);
        assertThat(finish(line(at))).isEqualTo(40);
        assertThat(finish(line(at.withHold(new Hold(true, new Hold.At(100)))))).isEqualTo(140);
        assertThat(finish(line(at.withHold(new Hold(false, new Hold.At(100)))))).isEqualTo(100);
        assertThat(finish(line(at.withHold(new Hold(false, new Hold.At(30)))))).isEqualTo(40);
        Hold asBefore = new Hold(true, new Hold.AsBefore(new Minutes.Certain(90), 30));
        Outlook outlook = outlook(line(at.withHold(asBefore)));
        assertThat(outlook.finish().median()).isEqualTo(100);
        assertThat(outlook.drivers()).isEqualTo(Map.of(Cause.HELD, 60.0, Cause.WORK, 40.0));
        assertThat(finish(line(at.withHold(asBefore).released()))).isEqualTo(40);
    }

    @Test
    void a_signed_gate_does_not_let_a_held_vehicle_go() {
        Vehicle at = vehicle("V", new Whereabouts.Signed(0), 60).withHold(new Hold(true, new Hold.At(25)));
        assertThat(finish(line(at))).isEqualTo(25);
    }

    @Test
    void parts_curing_and_signature_are_waited_for() {
        Stage stage = Stage.of("S", ALWAYS).withSignature(ALWAYS, new Minutes.Certain(7));
        Visit visit = Visit.of(new Minutes.Certain(60)).notBefore(15).withCuring(30);
        Vehicle vehicle = Vehicle.of("V", new Whereabouts.Waiting(5), List.of(visit));
        Outlook outlook = outlook(new Line(ALWAYS, List.of(stage), List.of(vehicle), List.of()));

        assertThat(outlook.finish().median()).isEqualTo(112);
        assertThat(outlook.drivers())
                .isEqualTo(Map.of(
                        Cause.RELEASE, 5.0,
                        Cause.PARTS, 10.0,
                        Cause.WORK, 60.0,
                        Cause.CURING, 30.0,
                        Cause.SIGNATURE, 7.0));
        assertThat(outlook.share(Cause.WORK)).isCloseTo(60 / 112.0, within(1e-12));
    }

    /** While something cures other work goes on; the gate waits for both, and for what cures after the work. */
    @Test
    void what_cures_already_bars_the_gate_and_not_the_work() {
        Vehicle at = Vehicle.of(
                "V",
                new Whereabouts.AtWork(0, 20),
                List.of(Visit.of(new Minutes.Certain(60)).cured(100)));
        Outlook outlook = outlook(line(at));

        assertThat(outlook.finish().median()).isEqualTo(100);
        assertThat(outlook.drivers()).isEqualTo(Map.of(Cause.WORK, 40.0, Cause.CURING, 60.0));
        assertThat(finish(line(
                        at.withVisits(List.of(Visit.of(new Minutes.Certain(60)).cured(30))))))
                .isEqualTo(40);
        assertThat(finish(line(at.withVisits(
                        List.of(Visit.of(new Minutes.Certain(60)).cured(100).withCuring(90))))))
                .isEqualTo(130);
    }

    /** By day from 6:00 to 15:30, in minutes of the first day; twelve hours begun at 15:00 are over at three in the morning. */
    @Test
    void a_cure_goes_on_at_night() {
        WorkingTime days = WorkingTime.of(List.of(new Interval(360, 930), new Interval(1800, 2370)));
        Visit hour = Visit.of(new Minutes.Certain(60)).withCuring(720);

        assertThat(cured(days, 840, hour)).isCloseTo(1800, within(1e-6));
        assertThat(cured(days, 360, hour)).isCloseTo(1800, within(1e-6));
        assertThat(cured(days, 360, hour.withCuring(120))).isCloseTo(540, within(1e-6));
        assertThat(cured(days, 2300, hour.withCuring(120))).isInfinite();
    }

    private static double cured(WorkingTime days, double from, Visit visit) {
        return finish(new Line(
                days,
                List.of(Stage.of("S", days)),
                List.of(Vehicle.of("V", new Whereabouts.Waiting(from), List.of(visit))),
                List.of()));
    }

    /** Gates refused with q: q / (1 − q) repeats on average, each of 40 minutes and another signature of 5. */
    @Test
    void refused_gates_repeat() {
        Stage stage = Stage.of("S", ALWAYS)
                .withSignature(ALWAYS, new Minutes.Certain(5))
                .withRefusal(0.2, new Minutes.Certain(40));
        Line line = new Line(ALWAYS, List.of(stage), List.of(vehicle("V", new Whereabouts.Waiting(0), 60)), List.of());
        Outlook outlook = Forecast.of(line, Effort.exactly(3, 10_000)).of("V");

        assertThat(outlook.finish().sorted()[0]).isEqualTo(65);
        assertThat(outlook.finish().mean()).isCloseTo(65 + 0.25 * 45, within(3 * 45 * Math.sqrt(0.3125) / 100));
        assertThat(outlook.finish().by(65).share()).isCloseTo(0.8, within(3 * 0.4 / 100));
    }

    /** Out of the bay at 50 to the second stage: behind the one that is there until 100, ahead of the one that sets off at 70. */
    @Test
    void a_vehicle_out_of_the_bay_takes_the_next_gap() {
        var bay = new Whereabouts.InBay(new Minutes.Certain(80), 30, OptionalInt.of(1));
        List<Vehicle> vehicles = List.of(
                vehicle("there", new Whereabouts.AtWork(1, 0), 0, 100),
                vehicle("behind", new Whereabouts.AtWork(0, 0), 70, 60),
                vehicle("back", bay, 0, 40));
        var forecast = Forecast.of(
                new Line(ALWAYS, List.of(Stage.of("A", ALWAYS), Stage.of("B", ALWAYS)), vehicles, List.of()),
                Effort.exactly(1, 1));

        assertThat(forecast.of("there").finish().median()).isEqualTo(100);
        assertThat(forecast.of("back").finish().median()).isEqualTo(140);
        assertThat(forecast.of("behind").finish().median()).isEqualTo(200);
        assertThat(forecast.of("back").drivers())
                .isEqualTo(Map.of(Cause.BAY, 50.0, Cause.PLACE, 50.0, Cause.WORK, 40.0));
        var ends = new Whereabouts.InBay(new Minutes.Certain(80), 30, OptionalInt.empty());
        assertThat(finish(line(vehicle("V", ends, 60)))).isEqualTo(50);
    }

    @Test
    void appointments_take_their_next_opening_and_may_be_failed() {
        WorkingTime slots = WorkingTime.of(List.of(
                new Interval(100, 130), new Interval(200, 230), new Interval(300, 330), new Interval(400, 430)));
        var test = new Appointment("test", slots, 30, 20, 0, 0);
        var road = new Appointment("road", ALWAYS, 45, 0, 0, 0);
        Vehicle vehicle = vehicle("V", new Whereabouts.AtWork(0, 0), 90);
        Line line = new Line(ALWAYS, List.of(Stage.of("S", ALWAYS)), List.of(vehicle), List.of(test, road));

        assertThat(finish(line)).isEqualTo(200 + 30 + 45);
        assertThat(finish(line.with(vehicle.booked(Map.of(0, 100.0))))).isEqualTo(100 + 30 + 45);
        assertThat(finish(line.with(vehicle("V", new Whereabouts.BehindTheLine(1, 10), 90))))
                .isEqualTo(55);
        var failing = new Appointment("test", slots, 30, 0, 0.5, 60);
        Outlook outlook = Forecast.of(
                        new Line(ALWAYS, List.of(Stage.of("S", ALWAYS)), List.of(vehicle), List.of(failing)),
                        Effort.exactly(2, 4000))
                .of("V");
        assertThat(outlook.finish().by(130).share()).isCloseTo(0.5, within(0.03));
        assertThat(outlook.finish().by(230).share()).isCloseTo(0.75, within(0.03));
        assertThat(outlook.finish().quantile(0.99)).isInfinite();
    }

    @Test
    void odds_never_make_certain() {
        Outlook outlook =
                outlook(line(vehicle("V", new Whereabouts.AtWork(0, 0), 60).promisedFor(1000)));

        assertThat(outlook.promise().orElseThrow().share()).isLessThan(1);
        assertThat(outlook.finish().by(-5).share()).isPositive();
    }

    private static Line line(Vehicle vehicle) {
        return new Line(ALWAYS, List.of(Stage.of("S", ALWAYS)), List.of(vehicle), List.of());
    }

    private static Vehicle vehicle(String name, Whereabouts at, double... work) {
        return Vehicle.of(
                name,
                at,
                Arrays.stream(work)
                        .mapToObj(minutes -> Visit.of(new Minutes.Certain(minutes)))
                        .toList());
    }

    private static Outlook outlook(Line line) {
        return Forecast.of(line, Effort.exactly(1, 1)).of("V");
    }

    private static double finish(Line line) {
        return outlook(line).finish().median();
    }
}

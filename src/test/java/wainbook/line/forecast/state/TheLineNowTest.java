package wainbook.line.forecast.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.line.forecast.state.TheLineNow.Post;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** How the works as it stands becomes the line that is forecast. Its one shift runs from 06:00 to 14:00 on working days. */
class TheLineNowTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    /** A Monday. */
    private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");

    private static final LocalDate FRIDAY = LocalDate.of(2026, 3, 6);
    private static final List<Post> POSTS =
            List.of(new Post("strip", "Strip", List.of("S-1", "S-2")), new Post("fit", "Fit", List.of("F-1")));

    private static final Shifts SHIFTS = new Shifts(
            List.of(Shift.everywhere(
                    "Early",
                    6 * 60,
                    14 * 60,
                    List.of(
                            DayOfWeek.MONDAY,
                            DayOfWeek.TUESDAY,
                            DayOfWeek.WEDNESDAY,
                            DayOfWeek.THURSDAY,
                            DayOfWeek.FRIDAY))),
            LONDON);

    @Test
    void the_first_in_front_leads_then_bays_then_those_before_the_line_as_they_are_given() {
        var line = line(
                vehicle("ordered", Doing.ORDERED, null, FRIDAY.minusDays(3)),
                vehicle("late donor", Doing.ACCEPTED, null, FRIDAY),
                vehicle("survey", Doing.SURVEY, "intake", FRIDAY.minusDays(1)),
                vehicle("bay", Doing.BAY, "fit", FRIDAY),
                vehicle("strips", Doing.WORK, "strip", FRIDAY),
                vehicle("stripped", Doing.SIGNED, "strip", FRIDAY),
                vehicle("fits", Doing.WORK, "fit", FRIDAY));

        assertThat(line.vehicles())
                .extracting(OnHand::order)
                .containsExactly("fits", "stripped", "strips", "bay", "ordered", "late donor", "survey");
    }

    @Test
    void a_shift_of_the_bay_does_not_work_at_the_line() {
        var late = new Shift("Late", 14 * 60, 22 * 60, List.of(DayOfWeek.values()), List.of("BAY"));
        var shifts = new Shifts(
                Stream.concat(SHIFTS.shifts().stream(), Stream.of(late)).toList(), LONDON);
        var line = new TheLineNow(
                        new Calendar(shifts, NOW),
                        new PastTimes(List.of()),
                        MoveTimes.ANY,
                        EntryRule.of(List.of()),
                        POSTS,
                        List.of(),
                        After.NOTHING)
                .line();
        double eveningMinute = 6 * 60;

        assertThat(line.stages())
                .allSatisfy(
                        stage -> assertThat(stage.working().next(eveningMinute)).isEqualTo(20 * 60));
        assertThat(line.working().next(eveningMinute)).isEqualTo(eveningMinute);
    }

    @Test
    void what_a_vehicle_is_doing_becomes_its_whereabouts_with_the_minutes_spent() {
        Line line = line(
                        vehicle("a", Doing.SIGNED, "fit", FRIDAY),
                        vehicle("b", Doing.UNSIGNED, "strip", FRIDAY),
                        vehicle("c", Doing.WORK, "strip", FRIDAY),
                        vehicle("d", Doing.ACCEPTED, null, FRIDAY))
                .line();

        assertThat(line.vehicles())
                .extracting(Vehicle::whereabouts)
                .containsExactly(
                        new Whereabouts.Signed(1),
                        new Whereabouts.Unsigned(0, 30),
                        new Whereabouts.AtWork(0, 30),
                        new Whereabouts.Waiting(0));
    }

    @Test
    void the_calendar_is_that_of_the_shifts_and_the_promise_ends_with_the_last_shift_of_its_day() {
        Line line = line(vehicle("a", Doing.WORK, "fit", FRIDAY)).line();

        assertThat(line.working().intervals().get(0).fromMinute()).isZero();
        assertThat(line.working().intervals().get(0).toMinute()).isEqualTo(4 * 60);
        assertThat(line.working().intervals().get(1).fromMinute()).isEqualTo(20 * 60);
        assertThat(line.vehicles().get(0).promised().orElseThrow()).isEqualTo(4 * 24 * 60 + 4 * 60);
    }

    @Test
    void a_promise_for_a_day_without_work_ends_with_the_last_shift_before_it() {
        Line sunday = line(vehicle("a", Doing.WORK, "fit", FRIDAY.plusDays(2))).line();

        assertThat(sunday.vehicles().get(0).promised().orElseThrow()).isEqualTo(4 * 24 * 60 + 4 * 60);
    }

    /** Clocks go forward on 29 March 2026: 14:00 in London is an hour earlier from then on. */
    @Test
    void a_promise_beyond_the_change_of_clocks_ends_by_the_local_clock() {
        Line line =
                line(vehicle("a", Doing.WORK, "fit", LocalDate.of(2026, 3, 30))).line();

        assertThat(line.vehicles().get(0).promised().orElseThrow()).isEqualTo(28 * 24 * 60 + 3 * 60);
    }

    @Test
    void a_stage_that_is_not_on_the_vehicles_route_is_only_passed() {
        var truck = new OnHand(
                "a",
                "TRUCK",
                Doing.ACCEPTED,
                Optional.empty(),
                Optional.empty(),
                NOW,
                0,
                Map.of("fit", 100),
                List.of(),
                FRIDAY);

        Line line = line(truck).line();
        assertThat(line.vehicles().get(0).visits().get(0).passing()).isTrue();
        assertThat(line.vehicles().get(0).visits().get(1).passing()).isFalse();
        assertThat(line(truck).basis(truck)).hasSize(1);
    }

    @Test
    void of_several_holds_the_one_that_stops_work_counts() {
        Line line = line(held(new Stop.Open(Stop.HOLD, 1, false, 5), new Stop.Open(Stop.HOLD, 2, true, 90)))
                .line();

        Hold hold = line.vehicles().get(0).hold().orElseThrow();
        assertThat(hold.stopsWork()).isTrue();
        assertThat(((Hold.AsBefore) hold.release()).openMinutes()).isEqualTo(90);
    }

    @Test
    void stations_stand_side_by_side_and_never_fewer_than_vehicles_are_there() {
        Line line = line(vehicle("a", Doing.WORK, "fit", FRIDAY), vehicle("b", Doing.WORK, "fit", FRIDAY))
                .line();

        assertThat(line.stages().get(0).stations()).isEqualTo(2);
        assertThat(line.stages().get(1).stations()).isEqualTo(2);
    }

    /** One signed vehicle at the last stage is through; the other still needs 100 planned minutes a stage. */
    @Test
    void the_same_state_has_the_same_forecast_and_who_is_signed_finishes_before_who_is_not() {
        var line =
                line(vehicle("through", Doing.SIGNED, "fit", FRIDAY), vehicle("behind", Doing.ACCEPTED, null, FRIDAY));
        LineForecast once = LineForecast.of(line);
        LineForecast again = LineForecast.of(line);

        assertThat(once.vehicles().get(1).outlook().finish().sorted())
                .isEqualTo(again.vehicles().get(1).outlook().finish().sorted());
        assertThat(once.vehicles().get(0).outlook().finish().median())
                .isLessThan(once.vehicles().get(1).outlook().finish().median());
        assertThat(once.vehicles().get(1).outlook().finish().quantile(0.01)).isPositive();
    }

    @Test
    void who_is_promised_for_a_day_gone_by_has_the_lowest_odds_and_never_none() {
        LineForecast found = LineForecast.of(line(
                vehicle("good", Doing.WORK, "fit", FRIDAY.plusDays(30)),
                vehicle("late", Doing.WORK, "strip", FRIDAY.minusDays(10))));

        LineForecast.Of first = found.lowestOddsFirst().get(0);
        assertThat(first.vehicle().order()).isEqualTo("late");
        assertThat(first.missesProbably()).isTrue();
        assertThat(first.odds()).isPositive().isLessThan(0.001);
        assertThat(found.lowestOddsFirst().get(1).odds()).isLessThan(1);
    }

    @Test
    void times_are_rounded_outwards_to_quarters_of_an_hour_and_have_no_date_beyond_the_calendar() {
        var calendar = new Calendar(SHIFTS, NOW);

        assertThat(calendar.notBefore(7)).contains(NOW);
        assertThat(calendar.notAfter(7)).contains(Instant.parse("2026-03-02T10:15:00Z"));
        assertThat(calendar.notAfter(15)).contains(Instant.parse("2026-03-02T10:15:00Z"));
        assertThat(calendar.notAfter(Double.POSITIVE_INFINITY)).isEmpty();
    }

    @Test
    void a_works_without_shifts_works_round_the_clock() {
        var always = new Calendar(new Shifts(List.of(), LONDON), NOW);

        assertThat(always.working().intervals()).hasSize(1);
        assertThat(always.working().intervals().get(0).toMinute())
                .isCloseTo(Calendar.DAYS_AHEAD * 24 * 60.0, within(1e-6));
    }

    private static TheLineNow line(OnHand... vehicles) {
        return new TheLineNow(
                new Calendar(SHIFTS, NOW),
                new PastTimes(List.of()),
                MoveTimes.ANY,
                EntryRule.of(List.of()),
                POSTS,
                List.of(vehicles),
                After.NOTHING);
    }

    private static OnHand vehicle(String order, Doing doing, String stage, LocalDate promised) {
        return new OnHand(
                order,
                "BUS",
                doing,
                Optional.ofNullable(stage),
                Optional.of("ST"),
                NOW,
                30,
                Map.of("strip", 100, "fit", 100),
                List.of(),
                promised);
    }

    private static OnHand held(Stop.Open... holds) {
        return new OnHand(
                "held",
                "BUS",
                Doing.WORK,
                Optional.of("fit"),
                Optional.of("ST"),
                NOW,
                30,
                Map.of("strip", 100, "fit", 100),
                List.of(holds),
                FRIDAY);
    }
}

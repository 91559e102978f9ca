package wainbook.line.forecast.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.model.Appointment;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.works.appointment.AppointmentKind;
import wainbook.works.shift.Shifts;

class AfterTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    /** A Monday, 10:00 in London. */
    private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");

    private static final Calendar CALENDAR = new Calendar(new Shifts(List.of(), LONDON), NOW);

    private static AppointmentKind lane(int noticeDays, int fails) {
        return new AppointmentKind(
                "LANE", "Brake lane", 9 * 60, 12 * 60, List.of(DayOfWeek.TUESDAY), 60, noticeDays, 7, fails);
    }

    private static After after(AppointmentKind kind) {
        return After.of(List.of(kind), List.of());
    }

    private static Outlook outlook(After after, Map<Integer, Double> booked) {
        var vehicle = Vehicle.of("WB-1", new Whereabouts.BehindTheLine(0, 0), List.of())
                .booked(booked);
        var line = new Line(CALENDAR.working(), List.of(), List.of(vehicle), after.appointments(CALENDAR));
        return Forecast.of(line, Effort.usual(1)).of("WB-1");
    }

    /** The next Tuesday, from 09:00 to 10:00. */
    @Test
    void without_notice_it_takes_place_in_the_first_hours_there_are() {
        Outlook found = outlook(after(lane(0, 0)), Map.of());
        assertThat(CALENDAR.at(found.finish().median())).isEqualTo("2026-03-03T10:00:00Z");
        assertThat(found.offTheLine().median()).isZero();
    }

    @Test
    void two_days_of_notice_put_it_off_to_the_tuesday_after() {
        assertThat(CALENDAR.at(outlook(after(lane(2, 0)), Map.of()).finish().median()))
                .isEqualTo("2026-03-10T10:00:00Z");
    }

    @Test
    void a_booking_that_is_still_to_come_is_kept() {
        double booked = CALENDAR.minute(Instant.parse("2026-03-17T10:30:00Z"));
        assertThat(CALENDAR.at(
                        outlook(after(lane(0, 0)), Map.of(0, booked)).finish().median()))
                .isEqualTo("2026-03-17T11:30:00Z");
    }

    @Test
    void on_a_holiday_nothing_takes_place() {
        var shifts = new Shifts(List.of(), List.of(), Set.of(LocalDate.of(2026, 3, 3)), LONDON);
        Appointment lane =
                after(lane(0, 0)).appointments(new Calendar(shifts, NOW)).get(0);
        assertThat(CALENDAR.at(lane.openings().next(0))).isEqualTo("2026-03-10T09:00:00Z");
    }

    /** Half of them fail: the finish is the first Tuesday in half of the draws, a week or more later in the others. */
    @Test
    void one_that_is_not_passed_comes_again_after_the_days_it_takes() {
        Outlook found = outlook(after(lane(0, 50)), Map.of());
        double first = CALENDAR.minute(Instant.parse("2026-03-03T10:00:00Z"));
        double second = CALENDAR.minute(Instant.parse("2026-03-17T10:00:00Z"));
        assertThat(found.finish().by(first).share()).isBetween(0.47, 0.53);
        assertThat(found.finish().by(second).share()).isBetween(0.72, 0.78);
    }

    @Test
    void without_a_record_as_many_fail_as_the_works_expects() {
        assertThat(after(lane(0, 10)).failure()).containsEntry("LANE", 0.1);
    }

    @Test
    void a_works_without_appointments_has_nothing_after_the_line() {
        assertThat(After.of(List.of(), List.of())).isEqualTo(After.NOTHING);
        Outlook found = outlook(After.NOTHING, Map.of());
        assertThat(found.finish().median()).isZero();
    }
}

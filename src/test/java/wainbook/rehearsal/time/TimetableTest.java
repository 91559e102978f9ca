package wainbook.rehearsal.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.works.shift.Shift;

class TimetableTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final List<DayOfWeek> WEEK =
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);
    private static final List<Shift> SHIFTS =
            List.of(Shift.everywhere("Day", 390, 900, WEEK), Shift.everywhere("Late", 900, 1350, WEEK));

    private static Timetable on(String now) {
        return Timetable.of(SHIFTS, LONDON, Instant.parse(now));
    }

    @Test
    void five_vehicles_a_day_move_on_within_the_day_shift() {
        Timetable wednesday = on("2026-11-25T06:34:00Z");
        assertThat(wednesday.start(0)).isEqualTo("2026-11-25T06:34:00Z");
        assertThat(wednesday.start(4)).isEqualTo("2026-11-25T13:06:00Z");
        assertThat(wednesday.start(5)).isEqualTo("2026-11-26T06:34:00Z");
        assertThat(wednesday.start(-1)).isEqualTo("2026-11-24T13:06:00Z");
    }

    @Test
    void nothing_moves_at_the_weekend() {
        assertThat(on("2026-11-29T12:00:00Z").start(0)).isEqualTo("2026-11-27T13:06:00Z");
        assertThat(on("2026-11-29T12:00:00Z").start(1)).isEqualTo("2026-11-30T06:34:00Z");
    }

    @Test
    void the_works_keeps_its_own_time_when_clocks_change() {
        assertThat(on("2026-10-23T07:00:00Z").start(0)).isEqualTo("2026-10-23T05:34:00Z");
        assertThat(on("2026-10-26T07:00:00Z").start(0)).isEqualTo("2026-10-26T06:34:00Z");
    }

    @Test
    void a_demonstration_begins_in_the_middle_of_a_morning_that_has_been() {
        assertThat(Timetable.morning(SHIFTS, LONDON, Instant.parse("2026-11-25T18:00:00Z"), 25))
                .isEqualTo("2026-11-25T10:15:00Z");
        assertThat(Timetable.morning(SHIFTS, LONDON, Instant.parse("2026-11-25T09:00:00Z"), 25))
                .isEqualTo("2026-11-24T10:15:00Z");
        assertThat(Timetable.morning(SHIFTS, LONDON, Instant.parse("2026-11-30T01:00:00Z"), 25))
                .isEqualTo("2026-11-27T10:15:00Z");
    }

    @Test
    void a_slot_is_a_takt_and_the_time_to_move() {
        Timetable day = on("2026-11-25T08:00:00Z");
        assertThat(Duration.between(day.start(0), day.start(1))).isEqualTo(Duration.ofMinutes(98));
    }
}

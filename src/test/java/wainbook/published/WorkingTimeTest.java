package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.works.shift.Break;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/**
 * Working minutes by a calendar of shifts, breaks and holidays, worked by hand. When clocks change in Central Europe: the IANA time
 * zone database, as the platform carries it (29 March and 25 October 2026, both at 01:00 UTC).
 */
class WorkingTimeTest {

    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final List<DayOfWeek> WORKDAYS = List.of(DayOfWeek.values()).subList(0, 5);
    private static final List<Break> BREAKS = List.of(pause("09:30", "09:45"), pause("12:00", "12:30"));

    /** 465 working minutes a day. */
    private static final Shifts DAYS = new Shifts(
            List.of(Shift.everywhere("Day", 7 * 60, 15 * 60 + 30, WORKDAYS)),
            BREAKS,
            Set.of(LocalDate.parse("2026-12-25")),
            BERLIN);

    private static final Shifts NIGHTS = new Shifts(
            List.of(Shift.everywhere("Night", 22 * 60, 6 * 60, List.of(DayOfWeek.values()))),
            List.of(pause("23:55", "00:15"), pause("04:00", "04:25")),
            Set.of(),
            BERLIN);

    private static Break pause(String from, String to) {
        return new Break(
                LocalTime.parse(from).toSecondOfDay() / 60, LocalTime.parse(to).toSecondOfDay() / 60);
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(BERLIN).toInstant();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T07:00, 2026-11-25T15:30, 465",
        "2026-11-25T09:00, 2026-11-25T10:55, 100",
        "2026-11-27T14:00, 2026-11-30T08:00, 150",
        "2026-12-24T14:40, 2026-12-28T09:40, 200",
        "2026-12-24T14:40, 2026-12-29T08:25, 600",
        "2026-12-25T00:00, 2026-12-27T23:00, 0"
    })
    void breaks_weekends_and_holidays_are_not_worked(String from, String to, long minutes) {
        assertThat(DAYS.workingMinutes(at(from), at(to))).isEqualTo(minutes);
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25T09:00, 100, 2026-11-25T10:55",
        "2026-11-27T14:00, 150, 2026-11-30T08:00",
        "2026-12-24T14:40, 600, 2026-12-29T08:25",
        "2026-12-24T14:40, 200, 2026-12-28T09:30"
    })
    void work_goes_on_after_breaks_weekends_and_holidays(String from, long minutes, String done) {
        assertThat(DAYS.after(at(from), Duration.ofMinutes(minutes))).contains(at(done));
    }

    @ParameterizedTest
    @CsvSource({"2026-03-27, 435", "2026-03-28, 375", "2026-10-23, 435", "2026-10-24, 495"})
    void a_night_when_the_clocks_change_is_an_hour_shorter_or_longer(LocalDate begun, long minutes) {
        Instant noon = begun.atTime(12, 0).atZone(BERLIN).toInstant();
        assertThat(NIGHTS.workingMinutes(
                        noon, begun.plusDays(1).atTime(12, 0).atZone(BERLIN).toInstant()))
                .isEqualTo(minutes);
    }

    /** A late shift from 12:15 has no part in a break from 12:00 to 12:30. */
    @Test
    void a_break_is_cut_only_from_shifts_that_contain_it_whole() {
        var late = new Shifts(
                List.of(Shift.everywhere("Late", 12 * 60 + 15, 15 * 60, WORKDAYS)), BREAKS, Set.of(), BERLIN);
        assertThat(late.workingMinutes(at("2026-11-25T00:00"), at("2026-11-26T00:00")))
                .isEqualTo(165);
        assertThat(DAYS.endOf(at("2026-11-25T12:10"))).contains(at("2026-11-25T15:30"));
    }

    @Test
    void no_work_takes_no_time_even_off_shift_and_work_that_never_comes_is_said_to_be_never() {
        Instant sunday = at("2026-11-29T10:00");
        assertThat(DAYS.after(sunday, Duration.ZERO)).contains(sunday);
        var never = new Shifts(List.of(Shift.everywhere("None", 0, 60, List.of())), BERLIN);
        assertThat(never.after(sunday, Duration.ofMinutes(1))).isEmpty();
    }

    /** Laws, over a year with both changes of the clocks: work adds up, and is undone by going that far. */
    @Test
    void work_adds_up_and_going_so_far_never_goes_further() {
        var random = new Random(20261125);
        Instant year = at("2026-01-01T00:00");
        for (int i = 0; i < 400; i++) {
            Shifts shifts = i % 2 == 0 ? DAYS : NIGHTS;
            Instant from = year.plus(Duration.ofMinutes(random.nextInt(500_000)));
            Instant between = from.plus(Duration.ofMinutes(random.nextInt(20_000)));
            Instant to = between.plus(Duration.ofMinutes(random.nextInt(20_000)));
            long whole = shifts.workingMinutes(from, to);
            assertThat(shifts.workingMinutes(from, between) + shifts.workingMinutes(between, to))
                    .isEqualTo(whole);
            Instant reached = shifts.after(from, Duration.ofMinutes(whole)).orElseThrow();
            assertThat(reached).isBeforeOrEqualTo(to);
            assertThat(shifts.workingMinutes(from, reached)).isEqualTo(whole);
        }
    }
}

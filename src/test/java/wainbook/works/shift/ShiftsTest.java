package wainbook.works.shift;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShiftsTest {

    private static final List<DayOfWeek> EVERY_DAY = List.of(DayOfWeek.values());
    private static final Shift EARLY = Shift.everywhere("Early", 6 * 60, 14 * 60, EVERY_DAY);
    private static final Shift NIGHT = Shift.everywhere("Night", 22 * 60, 6 * 60, EVERY_DAY);
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static Instant at(String time) {
        return Instant.parse(time);
    }

    @Test
    void a_shift_ends_at_its_local_time() {
        assertThat(new Shifts(List.of(EARLY), LONDON).endOf(at("2026-07-06T08:00:00Z")))
                .contains(at("2026-07-06T13:00:00Z"));
    }

    @Test
    void a_shift_begins_with_its_first_instant_and_is_over_with_its_last() {
        var shifts = new Shifts(List.of(EARLY), LONDON);
        assertThat(shifts.endOf(at("2026-01-05T06:00:00Z"))).isPresent();
        assertThat(shifts.endOf(at("2026-01-05T05:59:59Z"))).isEmpty();
        assertThat(shifts.endOf(at("2026-01-05T14:00:00Z"))).isEmpty();
    }

    @Test
    void a_night_shift_belongs_to_the_day_it_begins_on() {
        var sundayNight = Shift.everywhere("Night", 22 * 60, 6 * 60, List.of(DayOfWeek.SUNDAY));
        var shifts = new Shifts(List.of(sundayNight), LONDON);
        assertThat(shifts.endOf(at("2026-01-05T03:00:00Z"))).contains(at("2026-01-05T06:00:00Z"));
        assertThat(shifts.endOf(at("2026-01-05T23:00:00Z"))).isEmpty();
    }

    /** Clocks go forward on 29 March 2026 at 01:00 UTC and back on 25 October 2026 at 01:00 UTC. */
    @Test
    void a_night_when_the_clocks_change_is_an_hour_shorter_or_longer() {
        var shifts = new Shifts(List.of(NIGHT), LONDON);
        Instant spring = at("2026-03-28T22:00:00Z");
        assertThat(shifts.endOf(spring)).contains(spring.plus(Duration.ofHours(7)));
        Instant autumn = at("2026-10-24T21:00:00Z");
        assertThat(shifts.endOf(autumn)).contains(autumn.plus(Duration.ofHours(9)));
    }

    @Test
    void where_two_shifts_overlap_the_later_end_counts() {
        var late = Shift.everywhere("Late", 13 * 60, 22 * 60, EVERY_DAY);
        assertThat(new Shifts(List.of(EARLY, late), LONDON).endOf(at("2026-01-05T13:30:00Z")))
                .contains(at("2026-01-05T22:00:00Z"));
    }

    @Test
    void a_shift_with_places_works_there_and_nowhere_else() {
        var late = new Shift("Late", 14 * 60, 22 * 60, EVERY_DAY, List.of("BAY"));
        var shifts = new Shifts(List.of(EARLY, late), LONDON);
        Instant evening = at("2026-01-05T18:00:00Z");

        assertThat(shifts.working(evening)).isTrue();
        assertThat(shifts.at("BAY").working(evening)).isTrue();
        assertThat(shifts.at("LIFT").working(evening)).isFalse();
        assertThat(shifts.at("LIFT").working(at("2026-01-05T08:00:00Z"))).isTrue();
        assertThat(shifts.at(List.of("LIFT", "BAY")).working(evening)).isTrue();
    }

    @Test
    void a_place_at_which_no_shift_works_has_those_of_the_whole_works() {
        var elsewhere = new Shift("Late", 14 * 60, 22 * 60, EVERY_DAY, List.of("BAY"));
        var shifts = new Shifts(List.of(elsewhere), LONDON);
        assertThat(shifts.at("LIFT")).isEqualTo(shifts);
    }

    private static final Shift DAY = Shift.everywhere(
            "Day",
            7 * 60,
            15 * 60,
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY));

    private static long minutes(List<Shift> shifts, String from, String to) {
        return new Shifts(shifts, LONDON).workingMinutes(at(from), at(to));
    }

    @Test
    void only_minutes_of_a_shift_are_worked() {
        assertThat(minutes(List.of(DAY), "2026-01-05T09:00:00Z", "2026-01-05T09:45:59Z"))
                .isEqualTo(45);
        assertThat(minutes(List.of(DAY), "2026-01-05T14:00:00Z", "2026-01-06T08:00:00Z"))
                .isEqualTo(120);
        assertThat(minutes(List.of(DAY), "2026-01-05T16:00:00Z", "2026-01-06T06:00:00Z"))
                .isZero();
    }

    @Test
    void a_weekend_is_not_worked() {
        assertThat(minutes(List.of(DAY), "2026-01-09T14:00:00Z", "2026-01-12T08:00:00Z"))
                .isEqualTo(120);
    }

    @Test
    void a_minute_of_two_shifts_counts_once() {
        var within = Shift.everywhere("Short", 9 * 60, 10 * 60, EVERY_DAY);
        var overlapping = Shift.everywhere("Late", 14 * 60, 17 * 60, EVERY_DAY);
        assertThat(minutes(List.of(overlapping, within, DAY), "2026-01-05T00:00:00Z", "2026-01-06T00:00:00Z"))
                .isEqualTo(10 * 60);
    }

    @Test
    void a_night_shift_is_worked_from_before_the_first_day_and_into_the_last() {
        assertThat(minutes(List.of(NIGHT), "2026-01-05T02:00:00Z", "2026-01-05T23:00:00Z"))
                .isEqualTo(4 * 60 + 60);
    }

    /** Clocks go forward on 29 March 2026 and back on 25 October 2026, both at 01:00 UTC. */
    @Test
    void a_night_when_the_clocks_change_has_seven_or_nine_hours_of_work() {
        assertThat(minutes(List.of(NIGHT), "2026-03-28T12:00:00Z", "2026-03-29T12:00:00Z"))
                .isEqualTo(7 * 60);
        assertThat(minutes(List.of(NIGHT), "2026-10-24T12:00:00Z", "2026-10-25T12:00:00Z"))
                .isEqualTo(9 * 60);
        assertThat(minutes(List.of(NIGHT), "2026-10-25T00:30:00Z", "2026-10-25T01:30:00Z"))
                .isEqualTo(60);
    }

    @Test
    void a_day_shift_begins_at_its_local_time_before_and_after_the_clocks_change() {
        var early = List.of(EARLY);
        assertThat(minutes(early, "2026-03-28T00:00:00Z", "2026-03-28T07:00:00Z"))
                .isEqualTo(60);
        assertThat(minutes(early, "2026-03-29T00:00:00Z", "2026-03-29T06:00:00Z"))
                .isEqualTo(60);
    }

    @Test
    void a_shift_that_begins_in_the_hour_that_is_left_out_begins_after_it() {
        var inTheGap = Shift.everywhere("Gap", 60 + 30, 4 * 60, EVERY_DAY);
        assertThat(minutes(List.of(inTheGap), "2026-03-29T00:00:00Z", "2026-03-29T12:00:00Z"))
                .isEqualTo(90);
    }

    @Test
    void work_is_additive_over_any_instant_between() {
        var shifts = List.of(EARLY, NIGHT);
        Instant from = at("2026-10-23T05:17:00Z");
        Instant to = at("2026-10-27T19:41:00Z");
        long whole = new Shifts(shifts, LONDON).workingMinutes(from, to);
        assertThat(whole).isPositive();
        for (Instant between = from; between.isBefore(to); between = between.plus(Duration.ofMinutes(97))) {
            assertThat(new Shifts(shifts, LONDON).workingMinutes(from, between)
                            + new Shifts(shifts, LONDON).workingMinutes(between, to))
                    .isEqualTo(whole);
        }
    }

    @Test
    void nothing_is_worked_backwards_and_a_works_without_shifts_works_round_the_clock() {
        assertThat(minutes(List.of(DAY), "2026-01-05T10:00:00Z", "2026-01-05T09:00:00Z"))
                .isZero();
        assertThat(minutes(List.of(), "2026-01-03T00:00:00Z", "2026-01-04T00:00:00Z"))
                .isEqualTo(24 * 60);
        assertThat(new Shifts(List.of(), LONDON).working(at("2026-01-04T03:00:00Z")))
                .isTrue();
        assertThat(new Shifts(List.of(DAY), LONDON).working(at("2026-01-04T10:00:00Z")))
                .isFalse();
    }

    @Test
    void work_begins_again_with_the_next_shift() {
        assertThat(new Shifts(List.of(DAY), LONDON).nextBegin(at("2026-03-27T16:00:00Z")))
                .contains(at("2026-03-30T06:00:00Z"));
        assertThat(new Shifts(List.of(DAY), LONDON).nextBegin(at("2026-03-30T06:00:00Z")))
                .contains(at("2026-03-31T06:00:00Z"));
        assertThat(new Shifts(List.of(), LONDON).nextBegin(at("2026-03-30T06:00:00Z")))
                .isEmpty();
    }
}

package wainbook.works;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShiftsTest {

    private static final List<DayOfWeek> EVERY_DAY = List.of(DayOfWeek.values());
    private static final Shift EARLY = new Shift("Early", 6 * 60, 14 * 60, EVERY_DAY);
    private static final Shift NIGHT = new Shift("Night", 22 * 60, 6 * 60, EVERY_DAY);
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
        var sundayNight = new Shift("Night", 22 * 60, 6 * 60, List.of(DayOfWeek.SUNDAY));
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
        var late = new Shift("Late", 13 * 60, 22 * 60, EVERY_DAY);
        assertThat(new Shifts(List.of(EARLY, late), LONDON).endOf(at("2026-01-05T13:30:00Z")))
                .contains(at("2026-01-05T22:00:00Z"));
    }
}

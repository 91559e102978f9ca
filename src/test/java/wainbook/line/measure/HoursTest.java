package wainbook.line.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** Working time as a clock. */
class HoursTest {

    private static final Instant BEGIN = Instant.parse("2026-03-01T00:00:00Z");

    @Test
    void parts_add_up_to_the_whole_and_agree_with_the_shifts() {
        Instant end = BEGIN.plusSeconds(40 * 24 * 3600);
        Hours hours = Hours.of(TwoStations.DAY, BEGIN, end);
        var random = new SplittableRandom(1);
        for (int i = 0; i < 500; i++) {
            Instant one = BEGIN.plusSeconds(random.nextLong(40 * 24 * 3600));
            Instant other = one.plusSeconds(random.nextLong(1 + end.getEpochSecond() - one.getEpochSecond()));
            Instant between = one.plusSeconds(random.nextLong(1 + other.getEpochSecond() - one.getEpochSecond()));

            assertThat(hours.between(one, other))
                    .isEqualTo(hours.between(one, between) + hours.between(between, other));
            assertThat(hours.between(one, other) / 60_000).isEqualTo(TwoStations.DAY.workingMinutes(one, other));
        }
    }

    /** Night shift 22:00 to 06:00 in Berlin: 7 hours to 29 March 2026, 9 to 25 October. */
    @Test
    void a_night_in_which_clocks_change_is_shorter_or_longer() {
        var night = new Shifts(
                List.of(Shift.everywhere("night", 22 * 60, 6 * 60, List.of(DayOfWeek.values()))),
                ZoneId.of("Europe/Berlin"));

        assertThat(millis(night, "2026-03-28T12:00:00Z", "2026-03-29T12:00:00Z"))
                .isEqualTo(7 * 3_600_000L);
        assertThat(millis(night, "2026-10-24T12:00:00Z", "2026-10-25T12:00:00Z"))
                .isEqualTo(9 * 3_600_000L);
        assertThat(millis(night, "2026-06-10T12:00:00Z", "2026-06-11T12:00:00Z"))
                .isEqualTo(8 * 3_600_000L);
    }

    private static long millis(Shifts shifts, String from, String to) {
        Instant begin = Instant.parse(from);
        Instant end = Instant.parse(to);
        return Hours.of(shifts, begin, end).between(begin, end);
    }
}

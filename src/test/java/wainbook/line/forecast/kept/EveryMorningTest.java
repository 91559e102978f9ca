package wainbook.line.forecast.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** When the forecast of a day is kept: from five until the first shift of the day begins at half past six, in London. */
class EveryMorningTest {

    private static final LocalTime FIVE = LocalTime.of(5, 0);
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final List<DayOfWeek> WEEKDAYS =
            List.of(DayOfWeek.MONDAY, DayOfWeek.TUESDAY, DayOfWeek.WEDNESDAY, DayOfWeek.THURSDAY, DayOfWeek.FRIDAY);
    private static final Shifts DAY = new Shifts(
            List.of(
                    Shift.everywhere("Day", 6 * 60 + 30, 15 * 60, WEEKDAYS),
                    Shift.everywhere("Night", 22 * 60, 2 * 60, WEEKDAYS)),
            List.of(),
            Set.of(LocalDate.of(2026, 5, 4)),
            LONDON);

    /** Summer time begins on 29 March 2026: five in London is four in UTC from then on. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-02T04:59:59Z, false",
        "2026-03-02T05:00:00Z, true",
        "2026-03-02T06:29:59Z, true",
        "2026-03-02T06:30:00Z, false",
        "2026-03-02T18:00:00Z, false",
        "2026-03-01T05:30:00Z, false",
        "2026-03-30T04:00:00Z, true",
        "2026-03-30T05:30:00Z, false",
        "2026-05-04T04:30:00Z, false"
    })
    void between_its_time_and_the_first_shift_of_a_working_day(Instant now, boolean due) {
        assertThat(EveryMorning.isDue(now, FIVE, DAY)).isEqualTo(due);
    }

    @Test
    void a_works_without_shifts_has_an_hour_for_it_on_any_day() {
        var none = new Shifts(List.of(), LONDON);
        assertThat(EveryMorning.isDue(Instant.parse("2026-03-01T05:30:00Z"), FIVE, none))
                .isTrue();
        assertThat(EveryMorning.isDue(Instant.parse("2026-03-01T06:00:00Z"), FIVE, none))
                .isFalse();
    }
}

package wainbook.works.appointment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AppointmentKindTest {

    private static final List<DayOfWeek> TUESDAYS = List.of(DayOfWeek.TUESDAY);
    private static final AppointmentKind LANE =
            new AppointmentKind("LANE", "Brake lane", 9 * 60, 12 * 60, TUESDAYS, 60, 2, 1, 10);

    /** In London clocks go forward on 29 March 2026: 08:00 UTC is 09:00 from then on. */
    @ParameterizedTest
    @CsvSource({
        "2026-03-03T09:00:00Z, true",
        "2026-03-03T11:00:00Z, true",
        "2026-03-03T11:01:00Z, false",
        "2026-03-03T08:59:00Z, false",
        "2026-03-04T10:00:00Z, false",
        "2026-04-07T08:00:00Z, true",
        "2026-04-07T10:30:00Z, false"
    })
    void it_takes_place_on_its_weekdays_and_is_over_by_the_end_of_its_hours(Instant at, boolean open) {
        assertThat(LANE.open(at, ZoneId.of("Europe/London"))).isEqualTo(open);
    }

    @Test
    void one_that_is_longer_than_its_hours_or_always_fails_is_none() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AppointmentKind("A", "A", 540, 600, TUESDAYS, 61, 0, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AppointmentKind("A", "A", 540, 600, TUESDAYS, 60, 0, 0, 100));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AppointmentKind("A", "A", 540, 600, List.of(), 60, 0, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AppointmentKind("A", "A", 540, 600, TUESDAYS, 60, -1, 0, 0));
    }
}

package wainbook.handover.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PromisedTest {

    @ParameterizedTest
    @CsvSource({
        "THIS_WEEK, 2026-11-25, 2026-11-29",
        "THIS_WEEK, 2026-11-29, 2026-11-29",
        "THIS_WEEK, 2026-11-30, 2026-12-06",
        "LATE,      2026-11-25, 2026-11-24",
        "anything,  2026-11-25, 9999-12-31"
    })
    void a_week_ends_on_sunday_and_what_was_promised_for_today_is_not_late(
            String word, LocalDate today, LocalDate lastDay) {
        assertThat(Promised.of(word).lastDay(today)).isEqualTo(lastDay);
    }
}

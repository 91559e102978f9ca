package wainbook.works.instruments.daily;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.works.WorksSaying.ToolChecked;

/** A works rule, no source; figures by hand. */
class DailyCheckTest {

    @ParameterizedTest
    @CsvSource({
        "100.0, 0, true, false",
        "97.5, 2.564103, true, false",
        "97.0, 3.092784, false, false",
        "96.0, 4.166667, false, true",
        "103.0, -2.912621, true, false",
        "105.0, -4.761905, false, true"
    })
    void a_wrench_set_to_100_on_a_tester_of_one_percent(
            BigDecimal read, BigDecimal error, boolean passed, boolean failed) {
        ToolChecked said = check("100", read, Optional.of(new BigDecimal("4")), new BigDecimal("1"));
        assertThat(said.errorPercent()).isEqualByComparingTo(error);
        assertThat(said.limitPercent()).isEqualByComparingTo("3");
        assertThat(said.passed()).isEqualTo(passed);
        assertThat(DailyCheck.failed(said)).isEqualTo(failed);
    }

    @Test
    void where_no_calibration_says_it_a_small_torque_may_be_further_off() {
        assertThat(check("10", new BigDecimal(10), Optional.empty(), BigDecimal.ONE)
                        .actionPercent())
                .isEqualByComparingTo("6");
        assertThat(check("10.1", new BigDecimal(10), Optional.empty(), BigDecimal.ONE)
                        .actionPercent())
                .isEqualByComparingTo("4");
    }

    @Test
    void a_poor_tester_widens_no_limit_beyond_what_is_permitted() {
        assertThat(check("100", new BigDecimal(100), Optional.empty(), new BigDecimal(3))
                        .limitPercent())
                .isEqualByComparingTo("4");
    }

    private static ToolChecked check(
            String set, BigDecimal read, Optional<BigDecimal> permitted, BigDecimal testerPercent) {
        return new DailyCheck(new BigDecimal(set), List.of(read, read, read), permitted, testerPercent).by("TT-1");
    }
}

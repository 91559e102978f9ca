package wainbook.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LimitTest {

    @ParameterizedTest
    @CsvSource({
        "AT_LEAST, 100,  0, PASS", "AT_LEAST,  99.9999, 0, FAIL", "AT_LEAST, 105, 5, PASS",
        "AT_LEAST, 104.9, 5, UNDECIDED", "AT_LEAST, 95, 5, UNDECIDED", "AT_LEAST, 94.9, 5, FAIL",
        "AT_MOST,  100,  0, PASS", "AT_MOST, 100.0001, 0, FAIL", "AT_MOST, 95, 5, PASS",
        "AT_MOST,  95.1, 5, UNDECIDED", "AT_MOST, 105, 5, UNDECIDED", "AT_MOST, 105.1, 5, FAIL",
        "BELOW,    100,  0, FAIL", "BELOW, 99.9999, 0, PASS", "BELOW, 95, 5, UNDECIDED",
        "BELOW,    94.9, 5, PASS", "BELOW, 104.9, 5, UNDECIDED", "BELOW, 105, 5, FAIL"
    })
    void keeps_the_whole_uncertainty_as_guard_band(
            Limit.Sense sense, double value, double uncertainty, Verdict verdict) {
        assertThat(new Limit(sense, 100).judge(value, uncertainty, "ohm").verdict())
                .isEqualTo(verdict);
    }

    @Test
    void sees_twelve_digits_and_not_the_last_bit_of_a_double() {
        double next = Math.nextDown(0.1);

        assertThat(Limit.below(0.1).judge(next, 0, "ohm").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(Limit.below(0.1).judge(0.02 / 0.2, 0, "ohm").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(Limit.atLeast(0.1).judge(next, 0, "ohm").verdict()).isEqualTo(Verdict.PASS);
        assertThat(Limit.atMost(0.1).judge(Math.nextUp(0.1), 0, "ohm").verdict())
                .isEqualTo(Verdict.PASS);
        assertThat(Limit.below(0.1).judge(0.0999999999999, 0, "ohm").verdict())
                .as("thirteen nines differ in the twelfth digit")
                .isEqualTo(Verdict.PASS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void passes_nothing_that_is_no_number(double figure) {
        for (Limit limit : List.of(Limit.atLeast(1), Limit.atMost(1), Limit.below(1), Limit.atMost(figure))) {
            assertThat(limit.judge(figure, 0, "ohm").verdict()).isEqualTo(Verdict.FAIL);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void never_turns_a_fail_into_a_pass_or_back_by_more_uncertainty(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double limitOhm = random.nextDouble(1, 100);
            Limit limit = List.of(Limit.atLeast(limitOhm), Limit.atMost(limitOhm), Limit.below(limitOhm))
                    .get(random.nextInt(3));
            double value = random.nextDouble(1, 100);
            double uncertainty = random.nextDouble(0, 20);
            Verdict simple = limit.judge(value, 0, "ohm").verdict();

            assertThat(limit.judge(value, uncertainty, "ohm").verdict())
                    .as("seed %s: %s ± %s against %s", seed, value, uncertainty, limit)
                    .isIn(simple, Verdict.UNDECIDED);
            assertThat(limit.judge(value, uncertainty / 2, "ohm").verdict())
                    .as("seed %s: less uncertainty cannot undo a decision", seed)
                    .matches(half ->
                            limit.judge(value, uncertainty, "ohm").verdict() == Verdict.UNDECIDED || half == simple);
        }
    }

    @Test
    void an_uncertainty_beyond_all_numbers_decides_nothing() {
        for (Limit limit : List.of(Limit.atLeast(1e307), Limit.atMost(1e307), Limit.below(1e307))) {
            assertThat(limit.judge(1e306, Double.MAX_VALUE, "ohm").verdict()).isEqualTo(Verdict.UNDECIDED);
            assertThat(limit.judge(1e308, Double.MAX_VALUE, "ohm").verdict()).isEqualTo(Verdict.UNDECIDED);
            assertThat(limit.judge(1e308, Double.NaN, "ohm").verdict()).isEqualTo(Verdict.FAIL);
        }
    }
}

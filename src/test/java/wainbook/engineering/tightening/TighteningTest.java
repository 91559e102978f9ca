package wainbook.engineering.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.verdict;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.tightening.Tightening.Inputs;

class TighteningTest {

    @ParameterizedTest
    @CsvSource({
        "107.9, FAIL", "108, UNDECIDED", "109.9439, UNDECIDED", "109.944, PASS", "120, PASS",
        "129.624, PASS", "129.6241, UNDECIDED", "132, UNDECIDED", "132.1, FAIL", "0, FAIL"
    })
    void keeps_a_band_of_doubt_inside_the_limits(double readingNm, Verdict verdict) {
        assertThat(verdict(of(readingNm, 1.8, 1))).isEqualTo(verdict);
    }

    @Test
    void accepts_the_limits_themselves_where_no_uncertainty_is_known() {
        assertThat(verdict(of(108, 0, 1))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(132, 0, 1))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(132, 1.8, 0))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(Math.nextUp(132.0), 0, 1)))
                .as("the last bit of a double is no reading")
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(of(132.0000001, 0, 1))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void passes_nothing_with_an_instrument_coarser_than_the_limits() {
        assertThat(verdict(of(120, 25, 1))).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(of(133, 25, 1))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void names_limits_that_are_the_wrong_way_round() {
        assertThat(faultyFields(new Tightening().of(new Inputs(120, 132, 108, 0, 1))))
                .containsExactly("upperNm");
    }

    @Test
    void names_every_faulty_field() {
        assertThat(faultyFields(new Tightening().of(new Inputs(Double.NaN, -1, 0, -1, Double.NEGATIVE_INFINITY))))
                .containsExactly("readingNm", "lowerNm", "upperNm", "intervalPercent", "decisionFactor");
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void passes_no_more_when_the_instrument_is_worse(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            double readingNm = random.nextDouble(100, 140);
            double percent = random.nextDouble(0, 6);
            Verdict better = verdict(of(readingNm, percent / 2, 1));

            assertThat(verdict(of(readingNm, percent, 1)))
                    .as("seed %s: %s at %s %%", seed, readingNm, percent)
                    .isIn(better, Verdict.UNDECIDED);
        }
    }

    private static Answer<Tightening.Results> of(double readingNm, double intervalPercent, double factor) {
        return new Tightening().of(new Inputs(readingNm, 108, 132, intervalPercent, factor));
    }
}

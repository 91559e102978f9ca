package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;

/** Packs before they are joined. The limits, 1 % and 2 V, are common practice, no source. */
class PackVoltagesTest {

    @Test
    void packs_within_the_window_that_agree_with_the_meter_may_be_joined() {
        var answer = of(List.of(652.4, 653.1, 652.9), List.of(652.0, 653.0, 651.0), 0);
        assertThat(verdict(answer)).isEqualTo(Verdict.PASS);
        assertThat(results(answer).differenceV()).isCloseTo(0.7, within(1e-9));
        assertThat(results(answer).worstPack()).isEqualTo(3);
        assertThat(results(answer).worstAgreementPercent()).isCloseTo(1.9 / 652.9 * 100, within(1e-9));
    }

    @Test
    void two_volts_apart_pass_and_any_more_fails() {
        assertThat(verdict(of(List.of(650.0, 652.0), List.of(650.0, 652.0), 0))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(List.of(650.0, 652.01), List.of(650.0, 652.0), 0)))
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void near_the_window_the_meters_uncertainty_leaves_it_undecided() {
        assertThat(verdict(of(List.of(650.0, 651.99), List.of(650.0, 652.0), 5)))
                .isEqualTo(Verdict.UNDECIDED);
    }

    /** 1.9 V and 5 % of them are 1.995 V; 1.91 V and 5 % of them 2.0055 V. */
    @Test
    void a_difference_is_judged_with_the_meters_share_of_that_difference_and_no_more() {
        assertThat(verdict(of(List.of(650.0, 651.9), List.of(650.0, 651.9), 5))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(List.of(650.0, 651.91), List.of(650.0, 651.91), 5)))
                .isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(of(List.of(650.0, 652.1), List.of(650.0, 652.1), 5))).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(of(List.of(650.0, 652.2), List.of(650.0, 652.2), 5))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void of_two_packs_equally_far_from_their_word_the_first_is_named() {
        assertThat(results(of(List.of(600.0, 600.0, 600.0), List.of(600.0, 603.0, 597.0), 0))
                        .worstPack())
                .isEqualTo(2);
    }

    @Test
    void one_percent_off_its_own_word_passes_and_any_more_fails_however_near_the_packs_are() {
        assertThat(verdict(of(List.of(600.0, 600.0), List.of(606.0, 600.0), 0))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(List.of(600.0, 600.0), List.of(606.1, 600.0), 0))).isEqualTo(Verdict.FAIL);
        assertThat(results(of(List.of(600.0, 600.0), List.of(606.1, 600.0), 0)).agrees())
                .isFalse();
    }

    @Test
    void each_measured_pack_has_its_own_word_or_nothing_is_judged() {
        Answer<PackVoltages.Results> answer = of(List.of(600.0, 600.0), List.of(600.0), 0);
        assertThat(refusal(answer)).contains("packs-not-paired");
    }

    private static Answer<PackVoltages.Results> of(List<Double> measured, List<Double> reported, double percent) {
        return new PackVoltages().of(new PackVoltages.Inputs(measured, reported, 2, 1, percent));
    }
}

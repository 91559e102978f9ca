package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;
import static wainbook.engineering.Answers.working;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.Discharge.Inputs;

class DischargeTest {

    @ParameterizedTest
    @ValueSource(doubles = {0, 12, 59.9, 60})
    void takes_no_time_from_where_it_need_not_fall(double startV) {
        assertThat(results(from(startV, 0)).timeS()).isZero();
        assertThat(verdict(from(startV, 0))).isEqualTo(Verdict.PASS);
    }

    @Test
    void says_of_the_limit_itself_that_it_need_not_fall() {
        assertThat(working(from(60, 0)).steps())
                .anySatisfy(step -> assertThat(step.formula()).isEqualTo("U0 ≤ U: t = 0"));
    }

    @Test
    void takes_some_time_from_the_least_bit_above() {
        assertThat(results(from(Math.nextUp(60.0), 0)).timeS()).isPositive();
    }

    @Test
    void has_reached_the_limit_after_the_time_it_names() {
        double timeS = results(from(700, 120)).timeS();

        assertThat(results(from(700, timeS)).voltageAtLimitV()).isCloseTo(60, within(1e-9));
        assertThat(verdict(from(700, timeS))).isEqualTo(Verdict.PASS);
        assertThat(verdict(from(700, timeS * 0.999999))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void takes_both_tolerances_upward() {
        var nominal = results(new Discharge().of(new Inputs(0.0012 * 1.2, 33_000 * 1.05, 780, 60, 120, 0, 0)));
        var toleranced = results(new Discharge().of(new Inputs(0.0012, 33_000, 780, 60, 120, 20, 5)));

        assertThat(toleranced.timeS()).isCloseTo(nominal.timeS(), within(1e-9));
        assertThat(toleranced.energyJ()).isCloseTo(nominal.energyJ(), within(1e-9));
    }

    @Test
    void names_every_faulty_field() {
        assertThat(faultyFields(new Discharge().of(new Inputs(0, -1, -1, 0, -1, -1, Double.NaN))))
                .containsExactly(
                        "capacitanceF",
                        "resistanceOhm",
                        "startV",
                        "limitV",
                        "limitS",
                        "capacitanceTolerancePercent",
                        "resistanceTolerancePercent");
    }

    @Test
    void hands_out_no_figure_that_is_none() {
        assertThat(refusal(new Discharge().of(new Inputs(1e-200, 1e-200, 700, 60, 0, 0, 0))))
                .isEqualTo("beyond-reckoning");
    }

    private static Answer<Discharge.Results> from(double startV, double limitS) {
        return new Discharge().of(new Inputs(0.0012, 33_000, startV, 60, limitS, 0, 0));
    }
}

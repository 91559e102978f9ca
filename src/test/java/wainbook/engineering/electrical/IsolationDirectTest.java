package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.IsolationDirect.Inputs;

class IsolationDirectTest {

    @Test
    void passes_at_the_limit_itself() {
        assertThat(verdict(measured(350_000, 0))).isEqualTo(Verdict.PASS);
        assertThat(verdict(measured(Math.nextDown(350_000.0), 0)))
                .as("the last bit of a double is no reading")
                .isEqualTo(Verdict.PASS);
        assertThat(verdict(measured(349_999.9, 0))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void takes_the_accuracy_in_percent_of_the_reading() {
        assertThat(verdict(measured(500_000, 30))).isEqualTo(Verdict.PASS);
        assertThat(verdict(measured(499_999, 30))).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(measured(270_000, 30))).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(measured(269_000, 30))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void lets_the_instruments_ceiling_pass_but_never_prove_a_fail() {
        assertThat(verdict(atLeast(550e6))).isEqualTo(Verdict.PASS);
        assertThat(results(atLeast(550e6)).openEnded()).isTrue();
        assertThat(verdict(atLeast(100_000))).isEqualTo(Verdict.UNDECIDED);
    }

    @Test
    void keeps_a_dead_short_as_a_fail() {
        assertThat(verdict(measured(0, 5))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void refuses_a_test_voltage_under_the_working_voltage() {
        assertThat(refusal(of(Optional.of(1e6), Optional.empty(), Math.nextDown(700.0))))
                .isEqualTo("test-voltage-too-low");
        assertThat(verdict(of(Optional.of(1e6), Optional.empty(), 700))).isEqualTo(Verdict.PASS);
    }

    @Test
    void wants_one_reading_and_not_two() {
        assertThat(faultyFields(of(Optional.empty(), Optional.empty(), 1000)))
                .containsExactly("measuredOhm", "atLeastOhm");
        assertThat(faultyFields(of(Optional.of(1.0), Optional.of(1.0), 1000)))
                .containsExactly("measuredOhm", "atLeastOhm");
    }

    @Test
    void names_every_faulty_field() {
        var inputs = new Inputs(Optional.of(Double.NaN), Optional.empty(), 0, -1, 0, -1);

        assertThat(faultyFields(new IsolationDirect().of(inputs)))
                .containsExactly("measuredOhm", "testV", "workingV", "limitOhmPerVolt", "accuracyPercent");
    }

    private static Answer<IsolationDirect.Results> measured(double ohm, double accuracyPercent) {
        return new IsolationDirect()
                .of(new Inputs(Optional.of(ohm), Optional.empty(), 1000, 700, 500, accuracyPercent));
    }

    private static Answer<IsolationDirect.Results> atLeast(double ohm) {
        return of(Optional.empty(), Optional.of(ohm), 1000);
    }

    private static Answer<IsolationDirect.Results> of(
            Optional<Double> measuredOhm, Optional<Double> atLeastOhm, double testV) {
        return new IsolationDirect().of(new Inputs(measuredOhm, atLeastOhm, testV, 700, 500, 0));
    }
}

package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;
import static wainbook.engineering.Answers.working;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;

class BondingTest {

    @Test
    void fails_at_exactly_a_tenth_of_an_ohm() {
        assertThat(0.02 / 0.2).as("as doubles").isLessThan(0.1);
        assertThat(verdict(read(0.2, 0.02))).isEqualTo(Verdict.FAIL);
        assertThat(verdict(read(0.2, 0.0199999999))).isEqualTo(Verdict.PASS);
    }

    @Test
    void refuses_the_least_bit_under_a_fifth_of_an_ampere() {
        assertThat(refusal(read(Math.nextDown(0.2), 0.01))).isEqualTo("current-too-low");
        assertThat(verdict(read(0.2, 0.01))).isEqualTo(Verdict.PASS);
        assertThat(refusal(read(Double.MIN_VALUE, 0.01))).isEqualTo("current-too-low");
    }

    @Test
    void takes_no_current_or_what_is_no_number_for_a_fault_of_the_field() {
        assertThat(faultyFields(read(0, 0.01))).containsExactly("currentA");
        assertThat(faultyFields(read(-1, Double.NaN))).containsExactly("currentA", "voltageV");
        assertThat(faultyFields(of(1, 0.01, Optional.of(Double.POSITIVE_INFINITY), -0.1, -0.1)))
                .containsExactly("reversedVoltageV", "leadOhm", "expandedUncertaintyOhm");
    }

    @Test
    void never_passes_because_a_lead_was_swapped() {
        assertThat(verdict(read(0.2, -5))).isEqualTo(Verdict.FAIL);
        assertThat(results(read(0.2, -5)).resistanceOhm()).isEqualTo(25);
    }

    @Test
    void refuses_leads_that_exceed_the_reading() {
        assertThat(refusal(of(0.2, 0.01, Optional.empty(), 0.051, 0))).isEqualTo("leads-exceed-reading");
        assertThat(results(of(0.2, 0.02, Optional.empty(), 0.1, 0)).resistanceOhm())
                .as("equal in twelve digits")
                .isCloseTo(0, within(1e-15));
    }

    @Test
    void refuses_figures_that_overflow() {
        assertThat(refusal(read(0.2, Double.MAX_VALUE))).isEqualTo("beyond-reckoning");
    }

    @Test
    void shows_how_it_decided() {
        var working = working(of(0.5, 0.018, Optional.of(-0.0142), 0.002, 0.001));

        assertThat(working.decision()).hasValueSatisfying(decision -> {
            assertThat(decision.upper()).contains(0.1);
            assertThat(decision.expandedUncertainty()).isEqualTo(0.001);
        });
        assertThat(working.steps())
                .extracting("figures")
                .containsExactly("(|0.018| + |-0.0142|) / 2", "0.0161 / 0.5 − 0.002");
        assertThat(working.because().arguments()).containsExactly("0.0302", "0.1", "0.001");
    }

    private static Answer<Bonding.Results> read(double currentA, double voltageV) {
        return of(currentA, voltageV, Optional.empty(), 0, 0);
    }

    private static Answer<Bonding.Results> of(
            double currentA, double voltageV, Optional<Double> reversedV, double leadOhm, double uncertaintyOhm) {
        return new Bonding().of(new Bonding.Inputs(currentA, voltageV, reversedV, leadOhm, uncertaintyOhm));
    }
}

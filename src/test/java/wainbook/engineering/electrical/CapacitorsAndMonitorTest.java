package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;
import static wainbook.engineering.Answers.working;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Sentence;
import wainbook.engineering.Verdict;

class CapacitorsAndMonitorTest {

    @Test
    void fails_the_energy_limit_itself() {
        assertThat(results(energy(0.1)).energyJ()).isEqualTo(0.2);
        assertThat(verdict(energy(0.1))).isEqualTo(Verdict.FAIL);
        assertThat(verdict(energy(0.0999999))).isEqualTo(Verdict.PASS);
        assertThat(results(energy(0.05)).largestTotalF()).isEqualTo(0.1);
    }

    @Test
    void charges_to_nothing_in_no_time_and_never_to_the_whole() {
        assertThat(results(precharge(0)).timeS()).isEqualTo(0.0);
        assertThat(faultyFields(precharge(1))).containsExactly("ratio");
        assertThat(results(precharge(Math.nextDown(1.0))).timeS()).isFinite();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.9, 0.95, 0.99})
    void has_charged_to_the_ratio_after_the_time_it_names(double ratio) {
        var found = results(precharge(ratio));

        assertThat(1 - Math.exp(-found.timeS() / found.tauS())).isCloseTo(ratio, within(1e-12));
    }

    @Test
    void gives_no_resistor_where_the_insulation_is_already_lower() {
        var found = results(monitor(400_000, 100));

        assertThat(found.mustNotAlarmOhm()).as("420 kΩ cannot be reached").isEmpty();
        assertThat(found.halfSetOhm()).isPresent();
        assertThat(results(monitor(420_000, 100)).mustNotAlarmOhm())
                .as("only an open end would do")
                .isEmpty();
    }

    @Test
    void refuses_a_test_that_has_to_go_below_the_legal_limit() {
        assertThat(refusal(monitor(1e6, 500))).isEqualTo("isolation-already-below");
        assertThat(refusal(monitor(350_000 / 1.15, 100))).isEqualTo("isolation-already-below");
        assertThat(results(monitor(350_000 / 1.15 * 1.000001, 100)).mustAlarmOhm())
                .isPositive();
    }

    /** Set at 500 Ω/V: half of it is 250 Ω/V. */
    @Test
    void warns_of_the_test_at_half_the_set_value_only_where_that_is_below_the_legal_limit() {
        var warning = Sentence.of("engineering.caution.halfSetBelowLegal");
        assertThat(working(monitor(1e6, 250)).cautions()).doesNotContain(warning);
        assertThat(working(monitor(1e6, 250.001)).cautions()).startsWith(warning);
        assertThat(working(monitor(1e6, 250.001)).cautions()).containsAll(new MonitorTestResistor().cautions());
    }

    private static Answer<YCapacitorEnergy.Results> energy(double capacitanceF) {
        return new YCapacitorEnergy().of(new YCapacitorEnergy.Inputs(List.of(capacitanceF), 2, 0.2));
    }

    private static Answer<Precharge.Results> precharge(double ratio) {
        return new Precharge().of(new Precharge.Inputs(0.0012, 47, 700, ratio));
    }

    private static Answer<MonitorTestResistor.Results> monitor(double isolationOhm, double legalOhmPerVolt) {
        return new MonitorTestResistor()
                .of(new MonitorTestResistor.Inputs(isolationOhm, 500, 700, 15, legalOhmPerVolt));
    }
}

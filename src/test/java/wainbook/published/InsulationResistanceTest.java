package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.IsolationCombined;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.engineering.electrical.IsolationSuspect;
import wainbook.engineering.electrical.IsolationTwoVoltmeters;
import wainbook.engineering.electrical.IsolationVoltmeter;
import wainbook.engineering.electrical.IsolationVoltmeter.Rail;

/**
 * Formula of the voltmeter method: UN R100 revision 2, method with the tested device’s own voltage, 1.2.3.4, read in a public
 * copy. Limits of 100 and 500 Ω/V: UN R100 03 series, 5.1.3.1 and 5.1.3.2, read in a public copy. Numbers without another
 * source were derived by hand from that formula and Kirchhoff’s laws, to 1e-6 unless a decision is checked.
 */
class InsulationResistanceTest {

    private static final double PPM = 1e-4;

    /** UN R100 5.1.3: 100 Ω/V at 700 V is 70 kΩ, 500 Ω/V is 350 kΩ. */
    @ParameterizedTest
    @CsvSource({"100, 70000", "500, 350000"})
    void limits_of_un_r100_over_700_volts(double ohmPerVolt, double limitOhm) {
        var inputs = new IsolationDirect.Inputs(Optional.of(1e6), Optional.empty(), 1000, 700, ohmPerVolt, 0);

        assertThat(results(new IsolationDirect().of(inputs)).limitOhm()).isEqualTo(limitOhm);
    }

    /** Two rails of 2 MΩ and 1 MΩ, ideal meter; by hand. */
    @Test
    void ideal_voltmeter_finds_the_lesser_rail() {
        var found = results(measured(700, 700.0 * 2 / 3, 700.0 / 3, 160.655737704918, 350_000, Rail.NEGATIVE, 700));

        assertThat(found.isolationOhm()).isCloseTo(1e6, withinPercentage(PPM));
        assertThat(found.ohmPerVolt()).isCloseTo(1428.5714286, withinPercentage(PPM));
    }

    /** The same rails with a 10 MΩ meter: the formula is untouched, and the sum of the rails gives both together; by hand. */
    @Test
    void real_voltmeter_finds_the_same_and_both_rails_together() {
        var found = results(measured(700, 437.5, 218.75, 157.05128205128, 350_000, Rail.NEGATIVE, 700));

        assertThat(found.isolationOhm()).isCloseTo(1e6, withinPercentage(PPM));
        assertThat(found.parallelOhm())
                .hasValueSatisfying(ohm -> assertThat(ohm).isCloseTo(666_666.67, withinPercentage(PPM)));
        assertThat(found.negativeOhm().orElseThrow()).isCloseTo(2e6, withinPercentage(PPM));
        assertThat(found.positiveOhm().orElseThrow()).isCloseTo(1e6, withinPercentage(PPM));
    }

    /**
     * The older form R0·(1 + U2/U1)·(U1 − U1′)/U1′ (earlier UN R100 and SAE J1766, from memory) reads 6.25 % low with a 10 MΩ meter,
     * since it takes the rails' sum for the whole voltage. Ours does not.
     */
    @Test
    void older_form_leans_on_an_ideal_meter() {
        double older = 350_000 * (1 + 218.75 / 437.5) * (437.5 - 157.05128205128) / 157.05128205128;
        var found = results(measured(700, 437.5, 218.75, 157.05128205128, 350_000, Rail.NEGATIVE, 700));

        assertThat(older).isCloseTo(937_500, withinPercentage(PPM));
        assertThat(found.isolationOhm() / older).isCloseTo(700 / (437.5 + 218.75), withinPercentage(PPM));
    }

    /** Readings to a tenth of a volt; by hand. */
    @Test
    void rounded_readings() {
        var found = results(measured(700, 437.5, 218.8, 157.1, 350_000, Rail.NEGATIVE, 700));

        assertThat(found.isolationOhm()).isCloseTo(999_516.23, withinPercentage(PPM));
    }

    /** The positive rail reads higher, so the resistor belongs there; by hand. */
    @Test
    void resistor_on_the_positive_rail() {
        var answer = measured(650, 174.3, 456.5, 239.3, 325_000, Rail.POSITIVE, 650);

        assertThat(results(answer).isolationOhm()).isCloseTo(420_022.99, withinPercentage(PPM));
        assertThat(results(answer).ohmPerVolt()).isCloseTo(646.189, withinPercentage(PPM));
        assertThat(verdict(answer)).isEqualTo(Verdict.PASS);
        assertThat(refusal(measured(650, 174.3, 456.5, 91.3735, 325_000, Rail.NEGATIVE, 650)))
                .as("on the negative rail the formula would give 1.1 MΩ")
                .isEqualTo("wrong-rail");
    }

    /** Ω/V is taken over the working voltage: UN R94 Annex 11, fifth step, read in an extract; numbers by hand. */
    @Test
    void low_charge_does_not_flatter_the_result() {
        var inputs = new IsolationDirect.Inputs(Optional.of(360_000.0), Optional.empty(), 1000, 750, 500, 0);
        var answer = new IsolationDirect().of(inputs);

        assertThat(results(answer).ohmPerVolt()).isEqualTo(480.0);
        assertThat(verdict(answer)).isEqualTo(Verdict.FAIL);
    }

    /** Impossible readings; by hand. */
    @Test
    void impossible_readings_are_refused() {
        assertThat(refusal(measured(700, 437.5, 218.75, 440, 350_000, Rail.NEGATIVE, 700)))
                .isEqualTo("readings-inconsistent");
        assertThat(refusal(measured(700, 470, 245, 157, 350_000, Rail.NEGATIVE, 700)))
                .isEqualTo("readings-inconsistent");
    }

    /**
     * ± (0.5 % + 0.2 V) each, resistor ± 0.1 %, rectangular, independent, k = 2, propagated by hand as JCGM 100:2008 5.1.2
     * (from memory) says. Decisions with a guard band of U: ILAC-G8:09/2019 4.2.2, read in a public copy.
     */
    @ParameterizedTest
    @CsvSource({
        "700, 437.5, 157.1, 350000, 999516.23, 13364.4, PASS",
        "750, 563.8, 320.0, 375000, 380059.14, 6901.97, UNDECIDED",
        "750, 559.4, 314.3, 375000, 392074.86, 7034.35, PASS",
        "750, 569.0, 326.9, 375000, 366066.62, 6748.73, FAIL"
    })
    void uncertainty_decides_near_the_limit(
            double busV, double railV, double withV, double ohm, double expected, double uncertainty, Verdict verdict) {
        var inputs = new IsolationVoltmeter.Inputs(
                busV, railV, busV - railV, withV, ohm, Rail.NEGATIVE, busV, 500, 0.5, 0.2, 0.1, Optional.empty());
        var answer = new IsolationVoltmeter().of(inputs);

        assertThat(results(answer).isolationOhm()).isCloseTo(expected, withinPercentage(PPM));
        assertThat(results(answer).expandedUncertaintyOhm()).isCloseTo(uncertainty, withinPercentage(0.01));
        assertThat(verdict(answer)).isEqualTo(verdict);
    }

    /** Ten parts on one bus at 700 V; parallel conductances add (Kirchhoff), by hand. */
    @ParameterizedTest
    @CsvSource({"1.5e6, 364128.659, 520.1838, PASS", "0.6e6, 266931.32, 381.3305, FAIL", "372815.85, 210000, 300, FAIL"
    })
    void ten_parts_together(double heaterOhm, double parallelOhm, double ohmPerVolt, Verdict verdict) {
        List<Double> parts = List.of(2.4e6, 2.4e6, 2.6e6, 4e6, 10e6, 6e6, heaterOhm, 5e6, 8e6, 50e6);
        var answer = new IsolationCombined().of(new IsolationCombined.Inputs(parts, 700, 500));

        assertThat(results(answer).parallelOhm()).isCloseTo(parallelOhm, withinPercentage(PPM));
        assertThat(results(answer).ohmPerVolt()).isCloseTo(ohmPerVolt, withinPercentage(PPM));
        assertThat(verdict(answer)).isEqualTo(verdict);
    }

    /** Shares of the leakage in percent, to two places; by hand. */
    @Test
    void shares_of_ten_parts() {
        List<Double> parts = List.of(2.4e6, 2.4e6, 2.6e6, 4e6, 10e6, 6e6, 1.5e6, 5e6, 8e6, 50e6);
        var shares = results(new IsolationCombined().of(new IsolationCombined.Inputs(parts, 700, 500)))
                .shares();

        assertThat(shares.stream().map(share -> Math.round(share * 10_000) / 100.0))
                .containsExactly(15.17, 15.17, 14.0, 9.1, 3.64, 6.07, 24.28, 7.28, 4.55, 0.73);
    }

    /** Rail by rail, then both; by hand. */
    @ParameterizedTest
    @CsvSource({
        "5e6, 8e6, 3e6, 1518987.34",
        "4e6, 10e6, 1e6, 740740.74",
        "1518987.3417721519, 740740.7407407408, 1e18, 497925.31"
    })
    void three_parts_on_a_rail(double first, double second, double third, double railOhm) {
        var inputs = new IsolationCombined.Inputs(List.of(first, second, third), 700, 500);

        assertThat(results(new IsolationCombined().of(inputs)).parallelOhm()).isCloseTo(railOhm, withinPercentage(PPM));
    }

    /** A ceiling of 550 MΩ counts as 550 MΩ: common practice, no source. */
    @Test
    void instruments_ceiling() {
        var inputs = new IsolationDirect.Inputs(Optional.empty(), Optional.of(550e6), 1000, 700, 500, 0);
        var answer = new IsolationDirect().of(inputs);

        assertThat(results(answer).isolationOhm()).isEqualTo(550e6);
        assertThat(results(answer).openEnded()).isTrue();
        assertThat(verdict(answer)).isEqualTo(Verdict.PASS);
    }

    /** 400 kΩ on each rail: the voltmeter method gives 400 kΩ, an insulation tester on joined rails 200 kΩ; by hand. */
    @Test
    void two_methods_two_right_answers() {
        var joined = new IsolationDirect.Inputs(Optional.of(200_000.0), Optional.empty(), 1000, 700, 500, 0);
        var single = measured(700, 350, 350, 350.0 * 350 / 550, 350_000, Rail.NEGATIVE, 700);

        assertThat(results(new IsolationDirect().of(joined)).ohmPerVolt()).isCloseTo(285.714, withinPercentage(0.01));
        assertThat(verdict(new IsolationDirect().of(joined))).isEqualTo(Verdict.FAIL);
        assertThat(results(single).ohmPerVolt()).isCloseTo(571.43, withinPercentage(0.01));
        assertThat(verdict(single)).isEqualTo(Verdict.PASS);
    }

    /** Ten parts together, each ± 10 % (k = 2): by one tester, and by a tester each; propagated by hand. */
    @ParameterizedTest
    @CsvSource({"false, 13880.18", "true, 36412.86"})
    void uncertainty_of_ten_parts(boolean sameTester, double uncertaintyOhm) {
        List<Double> parts = List.of(2.4e6, 2.4e6, 2.6e6, 4e6, 10e6, 6e6, 1.5e6, 5e6, 8e6, 50e6);
        var answer = new IsolationCombined().of(new IsolationCombined.Inputs(parts, 700, 500, 10, sameTester));

        assertThat(results(answer).expandedUncertaintyOhm()).isCloseTo(uncertaintyOhm, withinPercentage(PPM));
        assertThat(verdict(answer)).isEqualTo(sameTester ? Verdict.UNDECIDED : Verdict.PASS);
    }

    /** The whole reads 210 kΩ, all but the heater make 480 858 Ω together; by hand. */
    @Test
    void part_that_was_not_measured() {
        List<Double> others = List.of(2.4e6, 2.4e6, 2.6e6, 4e6, 10e6, 6e6, 5e6, 8e6, 50e6);
        var found = results(new IsolationSuspect().of(new IsolationSuspect.Inputs(210_000, others)));

        assertThat(found.suspectOhm()).isCloseTo(372_815.85, withinPercentage(PPM));
        assertThat(found.parallelOhm()).isCloseTo(480_858, withinPercentage(0.001));
        assertThat(found.share()).isCloseTo(210_000 / 372_815.85, withinPercentage(PPM));
        assertThat(refusal(new IsolationSuspect().of(new IsolationSuspect.Inputs(210_000, List.of(210_000.0)))))
                .isEqualTo("others-below-whole");
    }

    /** A meter on each rail: formula from memory and derived again from Kirchhoff's laws, numbers by hand. */
    @Test
    void two_voltmeters_at_once() {
        var answer = new IsolationTwoVoltmeters()
                .of(new IsolationTwoVoltmeters.Inputs(452.9, 247.1, 169.0, 531.0, 350_000, 10e6, 700, 500));

        assertThat(results(answer).uncorrectedOhm()).isCloseTo(908_745.87, withinPercentage(PPM));
        assertThat(results(answer).isolationOhm()).isCloseTo(999_582.52, withinPercentage(PPM));
        assertThat(results(answer).ohmPerVolt()).isCloseTo(999_582.52 / 700, withinPercentage(PPM));
        assertThat(results(answer).limitOhm()).isEqualTo(350_000);
        assertThat(verdict(answer)).isEqualTo(Verdict.PASS);
    }

    /** 200 kΩ on each rail, meters of 10 MΩ: even rails may bear the resistor on either side, and 286 Ω/V fail; by hand. */
    @Test
    void two_voltmeters_on_even_rails() {
        double meters = 1 / (1 / 200_000.0 + 1 / 10e6);
        double with = 1 / (1 / meters + 1 / 350_000.0);
        double withV = 700 * with / (with + meters);
        var answer = new IsolationTwoVoltmeters()
                .of(new IsolationTwoVoltmeters.Inputs(350, 350, withV, 700 - withV, 350_000, 10e6, 700, 500));

        assertThat(results(answer).isolationOhm()).isCloseTo(200_000, withinPercentage(PPM));
        assertThat(verdict(answer)).isEqualTo(Verdict.FAIL);
    }

    @Test
    void two_voltmeters_that_cannot_be_right() {
        var two = new IsolationTwoVoltmeters();

        assertThat(refusal(two.of(new IsolationTwoVoltmeters.Inputs(247, 453, 169, 531, 350_000, 10e6, 700, 500))))
                .isEqualTo("wrong-rail");
        assertThat(refusal(two.of(new IsolationTwoVoltmeters.Inputs(453, 247, 453, 247, 350_000, 10e6, 700, 500))))
                .isEqualTo("meters-inconsistent");
        assertThat(refusal(two.of(new IsolationTwoVoltmeters.Inputs(453, 247, 169, 531, 350_000, 900_000, 700, 500))))
                .isEqualTo("meters-inconsistent");
    }

    /** 1 MΩ · (500/100 − 100/100) is the meter's own 4 MΩ: nothing is left for the vehicle. */
    @Test
    void two_voltmeters_that_see_nothing_but_themselves() {
        assertThat(refusal(new IsolationTwoVoltmeters()
                        .of(new IsolationTwoVoltmeters.Inputs(100, 100, 500, 100, 1e6, 4e6, 700, 500))))
                .isEqualTo("meters-inconsistent");
    }

    private static Answer<IsolationVoltmeter.Results> measured(
            double busV, double negativeV, double positiveV, double withV, double ohm, Rail rail, double workingV) {
        return new IsolationVoltmeter()
                .of(new IsolationVoltmeter.Inputs(
                        busV, negativeV, positiveV, withV, ohm, rail, workingV, 500, 0, 0, 0, Optional.of(10e6)));
    }
}

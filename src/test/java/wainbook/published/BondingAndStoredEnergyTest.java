package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.ArcEnergy;
import wainbook.engineering.electrical.BondBetweenParts;
import wainbook.engineering.electrical.Bonding;
import wainbook.engineering.electrical.Decay;
import wainbook.engineering.electrical.Discharge;
import wainbook.engineering.electrical.MonitorTestResistor;
import wainbook.engineering.electrical.Precharge;
import wainbook.engineering.electrical.PrechargeCheck;
import wainbook.engineering.electrical.VoltageClass;
import wainbook.engineering.electrical.VoltageClass.Current;
import wainbook.engineering.electrical.VoltageClass.Letter;
import wainbook.engineering.electrical.YCapacitorEnergy;

/** Numbers without another source were derived by hand from Ohm’s law and the laws of the capacitor, to 1e-6. */
class BondingAndStoredEnergyTest {

    private static final double PPM = 1e-4;

    /** Below 0.1 Ω with at least 0.2 A: UN R100 5.1.2.2, in the wording of a draft Indian standard that follows it. */
    @ParameterizedTest
    @CsvSource({
        "0.2, 0.0146, 0.073, PASS",
        "10, 0.42, 0.042, PASS",
        "0.2, 0.02, 0.1, FAIL",
        "1, 0.1, 0.1, FAIL",
        "1, 0.0999, 0.0999, PASS"
    })
    void bond_to_the_chassis(double currentA, double voltageV, double resistanceOhm, Verdict verdict) {
        var answer = bond(currentA, voltageV, Optional.empty(), 0);

        assertThat(results(answer).resistanceOhm()).isCloseTo(resistanceOhm, within(1e-9));
        assertThat(verdict(answer)).isEqualTo(verdict);
    }

    /** The same source. */
    @Test
    void too_little_current_proves_nothing() {
        assertThat(refusal(bond(0.198, 0.01, Optional.empty(), 0))).isEqualTo("current-too-low");
    }

    /** Both polarities averaged: common practice, no source. One alone would say 36.0 or 28.4 mΩ; by hand. */
    @Test
    void both_polarities() {
        assertThat(results(bond(0.5, 0.018, Optional.of(-0.0142), 0)).resistanceOhm())
                .isCloseTo(0.0322, within(1e-9));
    }

    /** A two-wire reading of 0.148 Ω with leads of 0.092 Ω; by hand. */
    @Test
    void leads_taken_off() {
        assertThat(results(bond(1, 0.148, Optional.empty(), 0.092)).resistanceOhm())
                .isCloseTo(0.056, within(1e-9));
    }

    /** t = R C ln(U0/U), by hand: passive, worst passive, active, and down to the 0.2 J of a large capacitor. */
    @ParameterizedTest
    @CsvSource({
        "33000, 700, 60, 0, 0, 97.28674",
        "33000, 780, 60, 20, 5, 127.98071",
        "150, 700, 60, 0, 0, 0.4422124",
        "33000, 700, 18.257418583505537, 0, 0, 144.40175",
        "1696.0174, 700, 60, 0, 0, 5",
        "339.2035, 700, 60, 0, 0, 1"
    })
    void discharge_of_1200_microfarad(
            double ohm, double startV, double limitV, double percentF, double percentOhm, double timeS) {
        var inputs = new Discharge.Inputs(0.0012, ohm, startV, limitV, 300, percentF, percentOhm);

        assertThat(results(new Discharge().of(inputs)).timeS()).isCloseTo(timeS, withinPercentage(PPM));
    }

    /** Voltage left after 60, 120 and 300 s, to the digits given; by hand. */
    @ParameterizedTest
    @CsvSource({"60, 153.84", "120, 33.81", "300, 0.359"})
    void voltage_left_while_discharging(double afterS, double leftV) {
        var inputs = new Discharge.Inputs(0.0012, 33_000, 700, 60, afterS, 0, 0);

        assertThat(results(new Discharge().of(inputs)).voltageAtLimitV()).isCloseTo(leftV, within(0.005));
    }

    /** E = ½ C U²: 294 J at 700 V, and still 2.16 J at 60 V; by hand. */
    @Test
    void energy_at_the_start_and_at_sixty_volts() {
        var found = results(new Discharge().of(new Discharge.Inputs(0.0012, 150, 700, 60, 1, 0, 0)));

        assertThat(found.energyJ()).isCloseTo(294, within(1e-9));
        assertThat(found.energyAtLimitVoltageJ()).isCloseTo(2.16, within(1e-9));
    }

    /** Less than 0.2 J: ISO 6469-4:2015 5.2.3, read in a preview. Numbers by hand. */
    @ParameterizedTest
    @CsvSource({
        "2, 0.47e-6, 700, 0.2303, FAIL",
        "2, 0.22e-6, 700, 0.1078, PASS",
        "8, 0.1e-6, 700, 0.196, PASS",
        "8, 0.1e-6, 750, 0.225, FAIL"
    })
    void energy_in_capacitors_to_the_chassis(
            int count, double eachF, double voltageV, double energyJ, Verdict verdict) {
        var answer = new YCapacitorEnergy()
                .of(new YCapacitorEnergy.Inputs(Collections.nCopies(count, eachF), voltageV, 0.2));

        assertThat(results(answer).energyJ()).isCloseTo(energyJ, withinPercentage(PPM));
        assertThat(verdict(answer)).isEqualTo(verdict);
    }

    /** Largest total for 0.2 J, to the digits given; by hand. */
    @ParameterizedTest
    @CsvSource({"400, 2.5e-6", "700, 0.8163e-6", "800, 0.625e-6", "850, 0.5536e-6"})
    void largest_total_capacitance(double voltageV, double totalF) {
        var inputs = new YCapacitorEnergy.Inputs(Collections.nCopies(1, 1e-7), voltageV, 0.2);

        assertThat(results(new YCapacitorEnergy().of(inputs)).largestTotalF())
                .isCloseTo(totalF, withinPercentage(0.01));
    }

    /** A device error of 15 % is IEC 61557-8 from memory; resistors by hand from parallel conductances. */
    @Test
    void resistors_for_an_insulation_monitor() {
        var inputs = new MonitorTestResistor.Inputs(2e6 / 3, 500, 700, 15, 100);
        var found = results(new MonitorTestResistor().of(inputs));

        assertThat(found.mustAlarmOhm()).isCloseTo(560_000, withinPercentage(PPM));
        assertThat(found.halfSetOhm())
                .hasValueSatisfying(ohm -> assertThat(ohm).isCloseTo(237_288.14, withinPercentage(PPM)));
        assertThat(found.mustNotAlarmOhm())
                .hasValueSatisfying(ohm -> assertThat(ohm).isCloseTo(1_135_135.14, withinPercentage(PPM)));
        assertThat(found.powerW()).isCloseTo(0.875, withinPercentage(PPM));
    }

    /** 300 kΩ are already below the 304 kΩ that have to be reached; by hand. */
    @Test
    void no_resistor_where_insulation_is_already_below() {
        var inputs = new MonitorTestResistor.Inputs(300_000, 500, 700, 15, 100);

        assertThat(refusal(new MonitorTestResistor().of(inputs))).isEqualTo("isolation-already-below");
    }

    /** A target that is just the legal limit may be tried; one that is just the insulation there is may not. By hand. */
    @Test
    void resistors_at_the_very_limits() {
        var atLegal = new MonitorTestResistor.Inputs(1e6, 100, 700, 0, 100);
        var atIsolation = new MonitorTestResistor.Inputs(70_000, 100, 700, 0, 50);

        assertThat(results(new MonitorTestResistor().of(atLegal)).mustAlarmOhm())
                .isCloseTo(70_000 / 0.93, withinPercentage(PPM));
        assertThat(refusal(new MonitorTestResistor().of(atIsolation))).isEqualTo("isolation-already-below");
    }

    /** t = −R C ln(1 − k), by hand; 95 % before the main contactor closes is common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0.9, 0.12987", "0.95, 0.1689593", "0.98, 0.22064", "0.99, 0.25973"})
    void precharge_through_47_ohm(double ratio, double timeS) {
        var found = results(new Precharge().of(new Precharge.Inputs(0.0012, 47, 700, ratio)));

        assertThat(found.timeS()).isCloseTo(timeS, within(5e-6));
        assertThat(found.tauS()).isCloseTo(0.0564, within(1e-12));
        assertThat(found.peakA()).isCloseTo(14.89362, withinPercentage(PPM));
        assertThat(found.energyJ()).isCloseTo(294, within(1e-9));
    }

    /** 60 V DC and 30 V AC belong to class A: ISO 6469-3 clause 4 from memory, 60 and 30 V read in FMVSS 305. */
    @ParameterizedTest
    @CsvSource({
        "60, DC, A",
        "60.1, DC, B",
        "30, AC, A",
        "30.1, AC, B",
        "1500, DC, B",
        "1500.1, DC, BEYOND",
        "1000, AC, B",
        "1000.1, AC, BEYOND",
        "0, DC, A"
    })
    void voltage_class(double voltageV, Current current, Letter letter) {
        assertThat(results(new VoltageClass().of(new VoltageClass.Inputs(voltageV, current)))
                        .voltageClass())
                .isEqualTo(letter);
    }

    /** Parts of 0.060 and 0.090 Ω: 0.2 Ω between parts in reach is UN R100 03 series from memory; by hand. */
    @ParameterizedTest
    @CsvSource({"0.06, 0.09, 0, 0.15, PASS", "0.1, 0.1, 0, 0.2, FAIL", "0.06, 0.09, 0.06, 0.15, UNDECIDED"})
    void bond_between_two_parts(double first, double second, double uncertainty, double between, Verdict verdict) {
        var answer = new BondBetweenParts().of(new BondBetweenParts.Inputs(first, second, uncertainty));

        assertThat(results(answer).betweenOhm()).isCloseTo(between, within(1e-9));
        assertThat(verdict(answer)).isEqualTo(verdict);
    }

    /** 540 V, 30 s later 255 V; by hand. */
    @Test
    void time_constant_from_two_readings() {
        var found = results(new Decay().of(new Decay.Inputs(540, 255, 30, 60)));

        assertThat(found.tauS()).isCloseTo(39.983708, withinPercentage(PPM));
        assertThat(found.remainingS()).isCloseTo(57.853187, withinPercentage(PPM));
        assertThat(results(new Decay().of(new Decay.Inputs(540, 60, 30, 60))).remainingS())
                .isZero();
        assertThat(refusal(new Decay().of(new Decay.Inputs(255, 255, 30, 60)))).isEqualTo("does-not-fall");
    }

    /** A start at or below the limit takes no time; by hand. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 12, 60})
    void what_is_low_already_takes_no_time(double startV) {
        var inputs = new Discharge.Inputs(0.0012, 33_000, startV, 60, 0, 0, 0);

        assertThat(results(new Discharge().of(inputs)).timeS()).isZero();
        assertThat(verdict(new Discharge().of(inputs))).isEqualTo(Verdict.PASS);
    }

    /** A bus of 700 V that stands at 540 V behind 47 Ω; by hand. */
    @Test
    void precharge_held_back_by_a_load() {
        var found = results(new PrechargeCheck().of(new PrechargeCheck.Inputs(700, 47, 540, Optional.empty(), 0.95)));

        assertThat(found.loadOhm().orElseThrow()).isCloseTo(158.625, withinPercentage(PPM));
        assertThat(found.leastLoadOhm()).isCloseTo(893, withinPercentage(PPM));
        assertThat(found.reachedRatio()).isCloseTo(0.771429, withinPercentage(PPM));
        assertThat(found.capacitanceF()).isEmpty();
    }

    /** 600 of 700 V after 100 ms through 47 Ω; by hand. */
    @Test
    void capacitance_from_a_precharge() {
        var found = results(new PrechargeCheck().of(new PrechargeCheck.Inputs(700, 47, 600, Optional.of(0.1), 0.95)));

        assertThat(found.tauS().orElseThrow()).isCloseTo(0.05138983, withinPercentage(PPM));
        assertThat(found.capacitanceF().orElseThrow()).isCloseTo(1093.4007e-6, withinPercentage(PPM));
        assertThat(found.loadOhm()).isEmpty();
        assertThat(refusal(new PrechargeCheck().of(new PrechargeCheck.Inputs(700, 47, 700, Optional.empty(), 0.95))))
                .isEqualTo("supply-reached");
    }

    /** 700 V, 7000 A short circuit, 45.7 cm: formula of Doan 2010 from memory, numbers by hand. */
    @ParameterizedTest
    @CsvSource({"0.1, 1.173096", "2, 23.46192"})
    void heat_of_an_arc(double seconds, double energy) {
        var found = results(new ArcEnergy().of(new ArcEnergy.Inputs(700, 7000, seconds, 457)));

        assertThat(found.energyCalPerCm2()).isCloseTo(energy, withinPercentage(PPM));
        assertThat(found.arcA()).isEqualTo(3500);
        assertThat(results(new ArcEnergy().of(new ArcEnergy.Inputs(700, 7000, seconds, found.burnDistanceMm())))
                        .energyCalPerCm2())
                .isCloseTo(1.2, withinPercentage(PPM));
    }

    private static Answer<Bonding.Results> bond(
            double currentA, double voltageV, Optional<Double> reversedV, double leadOhm) {
        return new Bonding().of(new Bonding.Inputs(currentA, voltageV, reversedV, leadOhm, 0));
    }
}

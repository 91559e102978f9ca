package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;
import wainbook.engineering.electrical.IsolationVoltmeter.Inputs;
import wainbook.engineering.electrical.IsolationVoltmeter.Rail;

class IsolationVoltmeterTest {

    /** A bus with a leak on each rail, read by one meter in turn: the forward calculation, from Kirchhoff’s laws. */
    private record Bus(double busV, double negativeOhm, double positiveOhm, double meterOhm) {

        double negativeV() {
            return busV * (1 / positiveOhm) / (1 / negativeOhm + 1 / positiveOhm + 1 / meterOhm);
        }

        double positiveV() {
            return busV * (1 / negativeOhm) / (1 / negativeOhm + 1 / positiveOhm + 1 / meterOhm);
        }

        double withResistorV(Rail rail, double insertedOhm) {
            double other = rail == Rail.NEGATIVE ? positiveOhm : negativeOhm;
            return busV * (1 / other) / (1 / negativeOhm + 1 / positiveOhm + 1 / meterOhm + 1 / insertedOhm);
        }

        Rail higher() {
            return negativeV() >= positiveV() ? Rail.NEGATIVE : Rail.POSITIVE;
        }

        Answer<IsolationVoltmeter.Results> measured(Rail rail, double insertedOhm, double workingV) {
            return of(new Inputs(
                    busV,
                    negativeV(),
                    positiveV(),
                    withResistorV(rail, insertedOhm),
                    insertedOhm,
                    rail,
                    workingV,
                    500,
                    0,
                    0,
                    0,
                    Optional.of(meterOhm)));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void finds_the_lesser_rail_whatever_the_meter_is(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Bus bus = new Bus(
                    random.nextDouble(300, 900),
                    random.nextDouble(5e4, 1e7),
                    random.nextDouble(5e4, 1e7),
                    random.nextDouble(1e6, 1e8));
            double insertedOhm = random.nextDouble(1e5, 1e6);
            var found = results(bus.measured(bus.higher(), insertedOhm, 750));

            assertThat(found.isolationOhm())
                    .as("seed %s, %s", seed, bus)
                    .isCloseTo(Math.min(bus.negativeOhm(), bus.positiveOhm()), withinPercentage(1e-6));
            assertThat(found.parallelOhm())
                    .hasValueSatisfying(ohm -> assertThat(ohm)
                            .isCloseTo(1 / (1 / bus.negativeOhm() + 1 / bus.positiveOhm()), withinPercentage(1e-4)));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void refuses_the_resistor_on_the_lower_rail(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Bus bus = new Bus(700, random.nextDouble(5e4, 9e5), random.nextDouble(1e6, 9e6), 1e7);

            assertThat(refusal(bus.measured(Rail.NEGATIVE, 350_000, 700)))
                    .as("seed %s, %s", seed, bus)
                    .isEqualTo("wrong-rail");
        }
    }

    @Test
    void accepts_either_rail_when_both_read_the_same() {
        Bus even = new Bus(700, 1e6, 1e6, 1e7);

        assertThat(results(even.measured(Rail.POSITIVE, 350_000, 700)).isolationOhm())
                .isCloseTo(1e6, within(1e-3));
        assertThat(results(even.measured(Rail.NEGATIVE, 350_000, 700)).isolationOhm())
                .isCloseTo(1e6, within(1e-3));
    }

    @Test
    void names_the_wrong_rail_before_inconsistent_readings() {
        assertThat(refusal(read(100, 700, 800, Rail.NEGATIVE))).isEqualTo("wrong-rail");
    }

    @Test
    void refuses_a_resistor_that_lowers_nothing() {
        assertThat(refusal(read(437.5, 218.75, 437.5, Rail.NEGATIVE))).isEqualTo("readings-inconsistent");
        assertThat(refusal(read(437.5, 218.75, Math.nextUp(437.5), Rail.NEGATIVE)))
                .isEqualTo("readings-inconsistent");
        assertThat(refusal(read(437.5, 218.75, Math.nextDown(437.5), Rail.NEGATIVE)))
                .as("the last bit of a double is no reading")
                .isEqualTo("readings-inconsistent");
    }

    @Test
    void allows_the_rails_one_percent_over_the_bus_and_no_more() {
        assertThat(verdict(read(470, 237, 160, Rail.NEGATIVE))).isEqualTo(Verdict.PASS);
        assertThat(refusal(read(470, 237.001, 160, Rail.NEGATIVE))).isEqualTo("readings-inconsistent");
    }

    @Test
    void leaves_out_the_second_estimate_when_the_rails_reach_the_bus() {
        assertThat(results(of(inputs(466, 234, 160, Rail.NEGATIVE, Optional.of(1e7))))
                        .parallelOhm())
                .isEmpty();
        assertThat(results(of(inputs(470, 235, 160, Rail.NEGATIVE, Optional.of(1e7))))
                        .parallelOhm())
                .isEmpty();
    }

    @Test
    void puts_the_resistor_on_the_rail_that_reads_higher_and_on_even_rails_on_the_negative() {
        assertThat(IsolationVoltmeter.railFor(350.1, 349.9)).isEqualTo(Rail.NEGATIVE);
        assertThat(IsolationVoltmeter.railFor(349.9, 350.1)).isEqualTo(Rail.POSITIVE);
        assertThat(IsolationVoltmeter.railFor(350, 350)).isEqualTo(Rail.NEGATIVE);
    }

    @Test
    void judges_over_the_working_voltage_and_not_over_the_bus_of_the_day() {
        Bus bus = new Bus(690, 360_000, 1e9, 1e7);
        var answer = bus.measured(Rail.POSITIVE, 375_000, 750);

        assertThat(results(answer).ohmPerVolt()).isCloseTo(480, within(1e-6));
        assertThat(verdict(answer)).isEqualTo(Verdict.FAIL);
    }

    @Test
    void names_every_faulty_field() {
        var faulty = new Inputs(
                0, -1, Double.NaN, 0, -1, Rail.NEGATIVE, Double.POSITIVE_INFINITY, 250, -1, -1, -1, Optional.of(0.0));

        assertThat(faultyFields(of(faulty)))
                .containsExactly(
                        "busV",
                        "negativeToChassisV",
                        "positiveToChassisV",
                        "withResistorV",
                        "insertedOhm",
                        "workingV",
                        "limitOhmPerVolt",
                        "readingAccuracyPercent",
                        "readingFloorV",
                        "insertedTolerancePercent",
                        "meterOhm");
    }

    @Test
    void hands_out_no_infinity() {
        assertThat(refusal(read(437.5, 218.75, Double.MIN_VALUE, Rail.NEGATIVE)))
                .isEqualTo("beyond-reckoning");
    }

    private static Answer<IsolationVoltmeter.Results> read(
            double negativeV, double positiveV, double withResistorV, Rail rail) {
        return of(inputs(negativeV, positiveV, withResistorV, rail, Optional.empty()));
    }

    private static Inputs inputs(
            double negativeV, double positiveV, double withResistorV, Rail rail, Optional<Double> meterOhm) {
        return new Inputs(700, negativeV, positiveV, withResistorV, 350_000, rail, 700, 500, 0, 0, 0, meterOhm);
    }

    private static Answer<IsolationVoltmeter.Results> of(Inputs inputs) {
        return new IsolationVoltmeter().of(inputs);
    }
}

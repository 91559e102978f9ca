package wainbook.engineering;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.electrical.Bonding;
import wainbook.engineering.electrical.IsolationCombined;
import wainbook.engineering.electrical.IsolationDirect;
import wainbook.engineering.electrical.IsolationVoltmeter;
import wainbook.engineering.electrical.IsolationVoltmeter.Rail;
import wainbook.engineering.measurement.Calibration;
import wainbook.engineering.measurement.Calibration.Pulls;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.Containment.Doubt;
import wainbook.engineering.measurement.Containment.Reading;
import wainbook.engineering.measurement.Drift;
import wainbook.engineering.measurement.ErrorPoint;
import wainbook.engineering.measurement.GaugeStudy;
import wainbook.engineering.statistics.Capability;
import wainbook.engineering.tightening.Tightening;
import wainbook.engineering.tightening.TorqueUnit;
import wainbook.engineering.tightening.TorqueUnit.Unit;

/** What has to hold for any figures: seeded, hundreds of them. */
class LawsTest {

    private static final int CASES = 60;

    /** From worse to better as the reading improves, and never back. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_better_reading_never_gets_a_worse_verdict(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            double uncertainty = random.nextDouble(0, 20);
            double ohm = random.nextDouble(0, 0.03);
            double interval = random.nextDouble(0, 10);
            climbs(random, 1e5, 8e5, read -> direct(read, uncertainty));
            climbs(random, -0.2, 0, read -> bond(-read, ohm));
            climbs(random, 80, 119, read -> torque(read, interval));
            climbs(random, -160, -121, read -> torque(-read, interval));
        }
    }

    /** The ends of the accepted range only move inward, and what was not accepted never becomes so. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void more_uncertainty_never_lets_more_pass(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            double reading = random.nextDouble(100, 140);
            double ohm = random.nextDouble(2e5, 6e5);
            double bond = random.nextDouble(0.05, 0.15);
            double withV = random.nextDouble(100, 250);
            double off = random.nextDouble(-5, 5);
            fades(random, 12, interval -> torque(reading, interval));
            fades(random, 40, percent -> direct(ohm, percent));
            fades(random, 0.08, uncertainty -> bond(bond, uncertainty));
            fades(random, 5, percent -> voltmeter(withV, percent));
            fades(random, 6, w -> calibration(off, w));
            double less = random.nextDouble(0, 10);
            double more = less + random.nextDouble(0, 10);
            assertThat(accepted(more).acceptLowerNm())
                    .isGreaterThanOrEqualTo(accepted(less).acceptLowerNm());
            assertThat(accepted(more).acceptUpperNm())
                    .isLessThanOrEqualTo(accepted(less).acceptUpperNm());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void an_instrument_without_error_leaves_nothing_in_doubt(long seed) {
        var random = new SplittableRandom(seed);
        var exact = List.of(new ErrorPoint(40, 0), new ErrorPoint(200, 0));
        List<Reading> readings = IntStream.range(0, CASES)
                .mapToObj(i -> new Reading("r" + i, random.nextDouble(0, 35), random.nextDouble(90, 150), 108, 132))
                .toList();
        var judged = results(new Containment().of(new Containment.Inputs(exact, exact, 35, 0, readings)))
                .readings();

        for (int i = 0; i < CASES; i++) {
            double nm = readings.get(i).nm();
            assertThat(judged.get(i).verdict())
                    .as("%s N·m", nm)
                    .isEqualTo(108 <= nm && nm <= 132 ? Doubt.SAFE : Doubt.SURE_OUT);
            assertThat(judged.get(i).linear()).isEqualTo(nm);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11, 12})
    void parts_together_never_insulate_better_than_the_worst_and_their_shares_make_one(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            List<Double> parts =
                    random.doubles(random.nextInt(1, 20), 1e3, 1e9).boxed().toList();
            var found = results(new IsolationCombined().of(new IsolationCombined.Inputs(parts, 700, 500)));

            assertThat(found.parallelOhm())
                    .isLessThanOrEqualTo(parts.stream().min(Double::compare).orElseThrow() * (1 + 1e-12));
            assertThat(found.shares().stream().mapToDouble(share -> share).sum())
                    .isCloseTo(1, within(1e-9));
        }
    }

    @Test
    void a_torque_comes_back_from_every_unit() {
        var random = new SplittableRandom(13);
        for (int i = 0; i < CASES; i++) {
            double torque = random.nextDouble(0.01, 5000);
            var units = results(new TorqueUnit().of(new TorqueUnit.Inputs(torque, Unit.NEWTON_METRE)));

            assertThat(back(units.poundForceFeet(), Unit.POUND_FORCE_FOOT)).isCloseTo(torque, within(1e-9));
            assertThat(back(units.poundForceInches(), Unit.POUND_FORCE_INCH)).isCloseTo(torque, within(1e-9));
            assertThat(back(units.kilogramForceMetres(), Unit.KILOGRAM_FORCE_METRE))
                    .isCloseTo(torque, within(1e-9));
        }
    }

    /** Another unit and another zero change no index, no share of the gauge, no trend. */
    @ParameterizedTest
    @ValueSource(longs = {14, 15, 16})
    void another_scale_changes_no_conclusion(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            List<Double> values =
                    random.doubles(random.nextInt(4, 30), 10, 20).boxed().toList();
            var plain = results(
                    new Capability().of(new Capability.Inputs(values, Optional.of(5.0), Optional.of(26.0), 0.95)));
            var moved = results(new Capability()
                    .of(new Capability.Inputs(moved(values), Optional.of(60.0), Optional.of(102.0), 0.95)));
            assertThat(moved.cpk().orElseThrow()).isCloseTo(plain.cpk().orElseThrow(), within(1e-9));
            assertThat(moved.ppkLow().orElseThrow()).isCloseTo(plain.ppkLow().orElseThrow(), within(1e-9));

            List<List<List<Double>>> table = List.of(
                    List.of(two(random), two(random)),
                    List.of(two(random), two(random)),
                    List.of(two(random), two(random)));
            var study = results(new GaugeStudy().of(new GaugeStudy.Inputs(table)));
            var other = results(new GaugeStudy()
                    .of(new GaugeStudy.Inputs(table.stream()
                            .map(part -> part.stream().map(LawsTest::moved).toList())
                            .toList())));
            assertThat(other.percentGauge()).isCloseTo(study.percentGauge(), within(1e-6));
            assertThat(other.gauge()).isCloseTo(2 * study.gauge(), within(1e-9));

            List<Double> days = IntStream.range(0, values.size())
                    .mapToObj(day -> day * 90.0)
                    .toList();
            var drift = results(new Drift().of(new Drift.Inputs(days, values, 200, Optional.empty())));
            var later = results(new Drift()
                    .of(new Drift.Inputs(
                            days.stream().map(day -> day + 1000).toList(), values, 200, Optional.empty())));
            assertThat(later.slopePerDay()).isCloseTo(drift.slopePerDay(), within(1e-12));
            assertThat(later.trendShown()).isEqualTo(drift.trendShown());
            assertThat(later.earliestDay().orElseThrow() - 1000)
                    .isCloseTo(drift.earliestDay().orElseThrow(), within(1e-4));
            assertThat(drift.earliestDay().orElseThrow())
                    .isLessThanOrEqualTo(
                            drift.centralDay().filter(day -> day > 0).orElse(Double.MAX_VALUE));
        }
    }

    private static void climbs(SplittableRandom random, double from, double to, DoubleFunction<Verdict> verdict) {
        int[] ranks = random.doubles(12, from, to)
                .sorted()
                .mapToObj(verdict)
                .mapToInt(LawsTest::rank)
                .toArray();
        assertThat(ranks).isSorted();
    }

    private static void fades(SplittableRandom random, double most, DoubleFunction<Verdict> verdict) {
        boolean[] passes = new boolean[13];
        double[] uncertainties = DoubleStream.concat(DoubleStream.of(0), random.doubles(12, 0, most))
                .sorted()
                .toArray();
        for (int i = 0; i < passes.length; i++) {
            passes[i] = verdict.apply(uncertainties[i]) == Verdict.PASS;
            assertThat(i == 0 || passes[i - 1] || !passes[i])
                    .as("uncertainty %s", uncertainties[i])
                    .isTrue();
        }
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case FAIL -> 0;
            case UNDECIDED -> 1;
            case PASS -> 2;
            case NONE -> throw new AssertionError("nothing was judged");
        };
    }

    private static Verdict direct(double ohm, double percent) {
        return verdict(new IsolationDirect()
                .of(new IsolationDirect.Inputs(Optional.of(ohm), Optional.empty(), 1000, 700, 500, percent)));
    }

    private static Verdict bond(double ohm, double uncertaintyOhm) {
        return verdict(new Bonding().of(new Bonding.Inputs(1, ohm, Optional.empty(), 0, uncertaintyOhm)));
    }

    private static Verdict torque(double nm, double interval) {
        return verdict(new Tightening().of(new Tightening.Inputs(nm, 108, 132, interval, 1)));
    }

    private static Tightening.Results accepted(double interval) {
        return results(new Tightening().of(new Tightening.Inputs(120, 108, 132, interval, 1)));
    }

    private static Verdict voltmeter(double withV, double percent) {
        return verdict(new IsolationVoltmeter()
                .of(new IsolationVoltmeter.Inputs(
                        750, 450, 300, withV, 375_000, Rail.NEGATIVE, 750, 500, percent, 0, 0, Optional.empty())));
    }

    private static Verdict calibration(double offPercent, double referenceW) {
        double read = 100 / (1 + offPercent / 100);
        var pulls = new Pulls(100, List.of(read, read * 1.001, read * 0.999));
        return verdict(new Calibration().of(new Calibration.Inputs(List.of(pulls), 4, referenceW, 0.1, List.of())));
    }

    private static double back(double torque, Unit unit) {
        return results(new TorqueUnit().of(new TorqueUnit.Inputs(torque, unit))).torqueNm();
    }

    private static List<Double> moved(List<Double> values) {
        return values.stream().map(value -> 2 * value + 50).toList();
    }

    private static List<Double> two(SplittableRandom random) {
        return random.doubles(2, 0, 1).boxed().toList();
    }
}

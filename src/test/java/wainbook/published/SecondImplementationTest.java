package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.FDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import wainbook.engineering.measurement.CoverageFactor;
import wainbook.engineering.measurement.CoverageFactor.Contribution;
import wainbook.engineering.measurement.DigitPreference;
import wainbook.engineering.measurement.Drift;
import wainbook.engineering.measurement.GaugeStudy;
import wainbook.engineering.measurement.TooLittleScatter;
import wainbook.engineering.statistics.AcceptancePlan;
import wainbook.engineering.statistics.AcceptancePlan.Level;
import wainbook.engineering.statistics.Capability;
import wainbook.engineering.statistics.RateInterval;

/** Hundreds of invented cases, seeded, reckoned a second time with another library and, where there is one, another formula. */
class SecondImplementationTest {

    private static final int CASES = 300;
    private static final double RELATIVE = 1e-9;

    @Test
    void regression_with_its_prediction() {
        var random = new SplittableRandom(41);
        for (int i = 0; i < CASES; i++) {
            int n = random.nextInt(3, 20);
            List<Double> days = figures(random, n, 0, 2000);
            List<Double> errors = figures(random, n, -5, 5);
            double at = random.nextDouble(0, 3000);
            var found = results(new Drift().of(new Drift.Inputs(days, errors, 4, Optional.of(at))));
            var other = new SimpleRegression();
            IntStream.range(0, n).forEach(one -> other.addData(days.get(one), errors.get(one)));
            double s = Math.sqrt(other.getMeanSquareError());
            double away = at - StatUtils.mean(plain(days));
            double half = new TDistribution(n - 2).inverseCumulativeProbability(0.975)
                    * s
                    * Math.sqrt(1 + 1.0 / n + away * away / other.getXSumSquares());

            same(found.slopePerDay(), other.getSlope());
            same(found.intercept(), other.getIntercept());
            same(found.residualS(), s);
            near(found.r2(), other.getRSquare());
            same(found.slopeError(), other.getSlopeStdErr());
            same(found.interceptError(), other.getInterceptStdErr());
            near(found.pSlope(), other.getSignificance());
            near(found.predictedUpper().orElseThrow(), other.predict(at) + half);
            near(found.predictedLower().orElseThrow(), other.predict(at) - half);
            assertThat(found.trendShown()).isEqualTo(n >= 4 && other.getSignificance() < 0.05);
        }
    }

    /** Sums of squares from variances of means, the interaction as what is left over: another way than ours. */
    @Test
    void analysis_of_variance_of_a_gauge_study() {
        var random = new SplittableRandom(43);
        for (int i = 0; i < CASES; i++) {
            int parts = random.nextInt(2, 9);
            int people = random.nextInt(2, 5);
            int trials = random.nextInt(2, 5);
            List<List<List<Double>>> table = table(random, parts, people, trials);
            var found = results(new GaugeStudy().of(new GaugeStudy.Inputs(table)));
            double freedom = (parts - 1.0) * (people - 1.0);
            double errorFreedom = parts * people * (trials - 1.0);
            double[] all = table.stream()
                    .flatMap(List::stream)
                    .flatMap(List::stream)
                    .mapToDouble(x -> x)
                    .toArray();
            double ofParts = people
                    * trials
                    * (parts - 1)
                    * StatUtils.variance(table.stream()
                            .mapToDouble(part -> StatUtils.mean(
                                    plain(part.stream().flatMap(List::stream).toList())))
                            .toArray());
            double ofPeople = parts
                    * trials
                    * (people - 1)
                    * StatUtils.variance(IntStream.range(0, people)
                            .mapToDouble(person -> StatUtils.mean(plain(table.stream()
                                    .flatMap(part -> part.get(person).stream())
                                    .toList())))
                            .toArray());
            double errors = (trials - 1)
                    * table.stream()
                            .flatMap(List::stream)
                            .mapToDouble(cell -> StatUtils.variance(plain(cell)))
                            .sum();
            double interaction = (all.length - 1) * StatUtils.variance(all) - ofParts - ofPeople - errors;
            double p = 1
                    - new FDistribution(freedom, errorFreedom)
                            .cumulativeProbability(interaction / freedom / (errors / errorFreedom));
            boolean pooled = p > 0.05;
            double repeat = pooled ? (interaction + errors) / (freedom + errorFreedom) : errors / errorFreedom;
            double beside = pooled ? repeat : interaction / freedom;
            double cross = pooled ? 0 : Math.max(0, (interaction / freedom - repeat) / trials);
            double person = Math.max(0, (ofPeople / (people - 1) - beside) / (parts * trials));
            double part = Math.max(0, (ofParts / (parts - 1) - beside) / (people * trials));

            assertThat(found.pInteraction()).isCloseTo(p, within(1e-8));
            assertThat(found.pooled()).isEqualTo(pooled);
            near(found.repeatability(), Math.sqrt(repeat));
            near(found.reproducibility() * found.reproducibility(), person + cross);
            near(found.part() * found.part(), part);
            near(found.total() * found.total(), repeat + person + cross + part);
        }
    }

    @Test
    void intervals_of_capability_by_normal_and_chi_square() {
        var random = new SplittableRandom(47);
        for (int i = 0; i < CASES; i++) {
            int n = random.nextInt(2, 200);
            List<Double> values = figures(random, n, 90, 110);
            double confidence = random.nextDouble(0.5, 0.999);
            var found = results(new Capability()
                    .of(new Capability.Inputs(values, Optional.of(80.0), Optional.of(125.0), confidence)));
            double s = Math.sqrt(StatUtils.variance(plain(values)));
            double mean = StatUtils.mean(plain(values));
            double pp = 45 / (6 * s);
            double ppk = Math.min(125 - mean, mean - 80) / (3 * s);
            var chi = new ChiSquaredDistribution(n - 1, 1e-13);
            double z = new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
            double error = Math.sqrt(1 / (9.0 * n) + ppk * ppk / (2 * (n - 1.0)));

            same(found.pp().orElseThrow(), pp);
            same(found.ppk().orElseThrow(), ppk);
            near(
                    found.ppLow().orElseThrow(),
                    pp * Math.sqrt(chi.inverseCumulativeProbability((1 - confidence) / 2) / (n - 1)));
            near(
                    found.ppHigh().orElseThrow(),
                    pp * Math.sqrt(chi.inverseCumulativeProbability((1 + confidence) / 2) / (n - 1)));
            near(found.ppkLow().orElseThrow(), ppk - z * error);
            near(found.ppkHigh().orElseThrow(), ppk + z * error);
        }
    }

    @Test
    void exact_intervals_by_beta_and_acceptance_by_binomial() {
        var random = new SplittableRandom(53);
        for (int i = 0; i < CASES; i++) {
            int pieces = random.nextInt(2, 3000);
            int events = random.nextInt(1, pieces);
            double confidence = random.nextDouble(0.5, 0.999);
            var found = results(new RateInterval().of(new RateInterval.Inputs(events, pieces, confidence)));

            near(
                    found.exactLow(),
                    new BetaDistribution(events, pieces - events + 1, 1e-13)
                            .inverseCumulativeProbability((1 - confidence) / 2));
            near(
                    found.exactHigh(),
                    new BetaDistribution(events + 1, pieces - events, 1e-13)
                            .inverseCumulativeProbability((1 + confidence) / 2));
            double share = random.nextDouble();
            var plan = results(new AcceptancePlan()
                    .of(new AcceptancePlan.Inputs(random.nextInt(2, 3201), Level.II, 2.5, Optional.of(share))));
            near(
                    plan.acceptProbability().orElseThrow(),
                    new BinomialDistribution(plan.sample(), share).cumulativeProbability(plan.accept()));
        }
    }

    @Test
    void coverage_by_student_and_scatter_by_chi_square() {
        var random = new SplittableRandom(59);
        for (int i = 0; i < CASES; i++) {
            double degrees = random.nextInt(1, 60);
            var coverage = results(new CoverageFactor()
                    .of(new CoverageFactor.Inputs(List.of(new Contribution(1, Optional.of(degrees + 0.5))), 0.95)));
            near(coverage.coverageFactor(), new TDistribution(degrees).inverseCumulativeProbability(0.975));

            List<Double> values = figures(random, random.nextInt(3, 60), 0, 1);
            var scatter = results(new TooLittleScatter().of(new TooLittleScatter.Inputs(values, 0.4, 0.01)));
            near(
                    scatter.threshold(),
                    new ChiSquaredDistribution(values.size() - 1, 1e-13).inverseCumulativeProbability(0.01));

            List<Integer> counts = IntStream.range(0, 10)
                    .mapToObj(one -> random.nextInt(1, 30))
                    .toList();
            int all = counts.stream().mapToInt(one -> one).sum();
            var digits = results(new DigitPreference().of(new DigitPreference.Inputs(counts)));
            assertThat(digits.pEven())
                    .isCloseTo(
                            1 - new ChiSquaredDistribution(9).cumulativeProbability(digits.chiSquare()), within(1e-12));
            assertThat(digits.pRound())
                    .isCloseTo(
                            1
                                    - new BinomialDistribution(all, 0.2)
                                            .cumulativeProbability(counts.get(0) + counts.get(5) - 1),
                            within(1e-12));
        }
    }

    private static List<Double> figures(SplittableRandom random, int n, double from, double to) {
        return random.doubles(n, from, to).boxed().toList();
    }

    /** Spreads of every kind, so that both ways of the interaction are taken. */
    private static List<List<List<Double>>> table(SplittableRandom random, int parts, int people, int trials) {
        double crossed = random.nextInt(2) * random.nextDouble(0, 3);
        double[] person = random.doubles(people, -1, 1).toArray();
        List<List<List<Double>>> table = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            double size = random.nextDouble(10, 20);
            List<List<Double>> row = new ArrayList<>();
            for (int one = 0; one < people; one++) {
                double cell = size + person[one] + crossed * random.nextDouble(-1, 1);
                row.add(random.doubles(trials, -0.5, 0.5)
                        .mapToObj(noise -> cell + noise)
                        .toList());
            }
            table.add(row);
        }
        return table;
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void same(double ours, double theirs) {
        assertThat(ours).isCloseTo(theirs, within(RELATIVE * Math.abs(theirs) + 1e-12));
    }

    /** Where what is compared is itself a small difference of large figures, or found by search. */
    private static void near(double ours, double theirs) {
        assertThat(ours).isCloseTo(theirs, within(1e-7 * Math.abs(theirs) + 1e-9));
    }
}

package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.ForecastScore;
import wainbook.engineering.flow.score.Crps;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.engineering.flow.score.Pit;
import wainbook.engineering.flow.score.Quantile;
import wainbook.engineering.flow.score.RankInterval;
import wainbook.engineering.flow.score.Scores;
import wainbook.engineering.flow.score.Widening;
import wainbook.engineering.statistics.Share;

/**
 * Scores of forecasts and the certainty of their figures. The Gaussian score is that of an open package of statistics (source
 * read), the quantiles' types those of a library's documentation (read); the other values were reckoned apart from this program by
 * closed form or full enumeration.
 */
class ForecastScoresTest {

    private static final double[] PRIMES = {2, 3, 5, 7, 11, 13, 17, 19, 23, 29};
    private static final NormalDistribution STANDARD = new NormalDistribution();

    @ParameterizedTest
    @CsvSource({
        "0.1, 2.9, 2.366666666667",
        "0.25, 5.5, 4.833333333333",
        "0.5, 12, 12",
        "0.8, 19.8, 21.4",
        "0.9, 23.6, 26.8",
        "0.95, 26.3, 29",
        "0, 2, 2",
        "1, 29, 29"
    })
    void quantiles_of_two_types(double p, double seventh, double eighth) {
        assertThat(Quantile.TYPE_7.of(PRIMES, p)).isCloseTo(seventh, within(1e-11));
        assertThat(Quantile.TYPE_8.of(PRIMES, p)).isCloseTo(eighth, within(1e-11));
    }

    @ParameterizedTest
    @CsvSource({
        "100, 0.5, 40, 61, 0.9647997998", "100, 0.8, 72, 89, 0.9674049169", "100, 0.95, 90, 100, 0.9826070607",
        "500, 0.9, 436, 464, 0.9633952970", "1000, 0.8, 775, 825, 0.9518995832", "2000, 0.95, 1880, 1920, 0.9599891778",
        "10000, 0.8, 7921, 8079, 0.9517324352", "10000, 0.95, 9457, 9543, 0.9515280547"
    })
    void ranks_that_hold_a_quantile(int n, double p, int lower, int upper, double confidence) {
        var found = RankInterval.of(n, p, 0.95);

        assertThat(found.lower()).isEqualTo(lower);
        assertThat(found.upper()).isEqualTo(upper);
        assertThat(found.confidence()).isCloseTo(confidence, within(1e-9));
        var other = new BinomialDistribution(n, p);
        assertThat(IntStream.range(lower, upper).mapToDouble(other::probability).sum())
                .isCloseTo(confidence, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "80, 100, 0.708157311, 0.873344448",
        "41, 50, 0.685630589, 0.914237922",
        "33, 50, 0.512347512, 0.787945287",
        "95, 100, 0.887165089, 0.983568121",
        "19, 20, 0.751267237, 0.998734911",
        "190, 200, 0.909972462, 0.975765835"
    })
    void exact_interval_of_a_share(int hits, int of, double low, double high) {
        var found = new Share(hits, of).exact(0.95);

        assertThat(found.low()).isCloseTo(low, within(1e-8));
        assertThat(found.high()).isCloseTo(high, within(1e-8));
    }

    /** 80 of 100 as reckoned apart; and its ends are where the score itself is z: (r − p)² = z² p (1 − p) / n. */
    @Test
    void score_interval_of_a_share() {
        assertThat(new Share(80, 100).score(0.95).low()).isCloseTo(0.711170834, within(1e-8));
        assertThat(new Share(80, 100).score(0.95).high()).isCloseTo(0.866633067, within(1e-8));
        double z = STANDARD.inverseCumulativeProbability(0.975);
        for (int hits = 1; hits < 50; hits++) {
            var interval = new Share(hits, 50).score(0.95);
            for (double end : new double[] {interval.low(), interval.high()}) {
                double off = hits / 50.0 - end;
                assertThat(off * off).isCloseTo(z * z * end * (1 - end) / 50, within(1e-12));
            }
        }
    }

    @Test
    void odds_from_draws() {
        var often = new Share(8743, 10_000).score(0.95);
        assertThat(often.low()).isCloseTo(0.867658432, within(1e-9));
        assertThat(often.high()).isCloseTo(0.880654107, within(1e-9));
        assertThat(new Share(0, 2000).score(0.95).high()).isCloseTo(0.001917047, within(1e-9));
    }

    @Test
    void score_of_draws() {
        assertThat(Crps.plain(new double[] {1, 2, 4}, 3)).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(Crps.fair(new double[] {1, 2, 4}, 3)).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(Crps.plain(new double[] {10, 12, 13, 15, 20}, 14)).isCloseTo(0.96, within(1e-12));
        assertThat(Crps.fair(new double[] {10, 12, 13, 15, 20}, 14)).isCloseTo(0.5, within(1e-12));
    }

    /** Closed forms against the table, and the score of many evenly spread draws against the closed form. */
    @ParameterizedTest
    @CsvSource({"0, 0.233694977255", "1, 0.602441357628", "2, 1.452791821686"})
    void score_of_a_normal_law(double outcome, double score) {
        double closed = outcome * (2 * STANDARD.cumulativeProbability(outcome) - 1)
                + 2 * STANDARD.density(outcome)
                - 1 / Math.sqrt(Math.PI);
        double[] draws = IntStream.range(0, 20_000)
                .mapToDouble(one -> STANDARD.inverseCumulativeProbability((one + 0.5) / 20_000))
                .toArray();

        assertThat(closed).isCloseTo(score, within(1e-10));
        assertThat(Crps.plain(draws, outcome)).isCloseTo(score, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"1, 0.120791962065", "2, 0.647869351516"})
    void score_of_a_lognormal_law(double outcome, double score) {
        double w = Math.log(outcome) / 0.5;
        double closed = outcome * (2 * STANDARD.cumulativeProbability(w) - 1)
                - 2
                        * Math.exp(0.125)
                        * (STANDARD.cumulativeProbability(w - 0.5)
                                + STANDARD.cumulativeProbability(0.5 / Math.sqrt(2))
                                - 1);
        double[] draws = IntStream.range(0, 20_000)
                .mapToDouble(one -> Math.exp(0.5 * STANDARD.inverseCumulativeProbability((one + 0.5) / 20_000)))
                .toArray();

        assertThat(closed).isCloseTo(score, within(1e-9));
        assertThat(Crps.plain(draws, outcome)).isCloseTo(score, within(1e-4));
    }

    /** Pair by pair, as the formula stands, where ours sorts once. */
    @Test
    void score_of_draws_by_all_their_pairs() {
        var random = new SplittableRandom(51);
        for (int i = 0; i < 100; i++) {
            double[] draws =
                    random.doubles(random.nextInt(1, 60), 5000, 5400).sorted().toArray();
            double outcome = random.nextDouble(4900, 5500);
            double distance = Arrays.stream(draws)
                    .map(one -> Math.abs(one - outcome))
                    .average()
                    .orElseThrow();
            double apart = Arrays.stream(draws)
                    .map(one -> Arrays.stream(draws)
                            .map(other -> Math.abs(one - other))
                            .sum())
                    .sum();

            assertThat(Crps.plain(draws, outcome))
                    .isCloseTo(distance - apart / (2.0 * draws.length * draws.length), within(1e-9));
        }
    }

    @Test
    void scores_of_quantiles_intervals_and_odds() {
        assertThat(Scores.pinball(0.9, 10, 13)).isCloseTo(2.7, within(1e-12));
        assertThat(Scores.pinball(0.9, 10, 8)).isCloseTo(0.2, within(1e-12));
        assertThat(Scores.pinball(0.1, 10, 13)).isCloseTo(0.3, within(1e-12));
        assertThat(Scores.pinball(0.1, 10, 8)).isCloseTo(1.8, within(1e-12));
        assertThat(Scores.interval(0.8, 9, 14, 15)).isCloseTo(15, within(1e-12));
        assertThat(Scores.interval(0.8, 9, 14, 12)).isCloseTo(5, within(1e-12));
        assertThat(Scores.interval(0.8, 9, 14, 8)).isCloseTo(15, within(1e-12));
        double[] odds = {0.9, 0.8, 0.7, 0.6, 0.3};
        boolean[] came = {true, true, false, true, false};
        assertThat(IntStream.range(0, 5)
                        .mapToDouble(one -> Scores.brier(odds[one], came[one]))
                        .average()
                        .orElseThrow())
                .isCloseTo(0.158, within(1e-12));
    }

    @Test
    void places_in_the_forecast() {
        var found = Pit.of(List.of(14, 9, 8, 7, 10, 12, 9, 8, 9, 14));

        assertThat(found.chiSquare()).isCloseTo(5.6, within(1e-8));
        assertThat(found.p()).isCloseTo(0.779187716, within(1e-8));
        assertThat(Pit.place(new double[] {1, 2, 2, 3}, 2, 0.5)).isCloseTo((1 + 0.5 * 3) / 5, within(1e-12));
        assertThat(Pit.place(new double[] {1, 2, 3}, 0, 0)).isZero();
    }

    @Test
    void a_difference_seen_with_the_same_luck() {
        double[] a = {12.1, 10.4, 13.0, 11.2, 12.7, 10.9, 11.8, 12.4};
        double[] b = {11.0, 9.9, 11.7, 10.5, 11.1, 10.2, 10.6, 11.5};
        var found = PairedDifference.of(b, a, 0.95);

        assertThat(found.mean()).isCloseTo(1.0, within(1e-12));
        assertThat(found.halfWidth()).isCloseTo(0.306359994, within(1e-8));
        assertThat(new TTest().pairedTTest(a, b)).isLessThan(0.05);
        assertThat(PairedDifference.of(new double[] {1}, new double[] {2}, 0.95).halfWidth())
                .isInfinite();
    }

    /** Fifty forecasts, 80 %: the 41st smallest excess. */
    @Test
    void widening_to_what_an_interval_says() {
        double[] excess =
                IntStream.rangeClosed(1, 50).mapToDouble(one -> 51 - one).toArray();

        assertThat(Widening.rank(50, 0.8)).isEqualTo(41);
        assertThat(Widening.rank(19, 0.8)).isEqualTo(16);
        assertThat(Widening.of(excess, 0.8)).hasValue(41);
        assertThat(Widening.of(new double[] {1, 2, 3}, 0.95)).isEmpty();
    }

    @Test
    void forecasts_scored_together() {
        List<Double> draws = List.of(20.0, 10.0, 15.0, 12.0, 13.0);
        var found = results(new ForecastScore()
                .of(new ForecastScore.Inputs(List.of(14.0, 12.0, 21.0, 13.0), List.of(draws, draws, draws, draws))));

        assertThat(found.crps()).isCloseTo((0.96 + crps(12) + crps(21) + crps(13)) / 4, within(1e-12));
        assertThat(found.coverage50()).isEqualTo(0.75);
        assertThat(found.coverage80()).isEqualTo(0.75);
        assertThat(found.coverage95()).isEqualTo(0.75);
        assertThat(found.coverage95Low()).isCloseTo(0.194120449, within(1e-6));
        assertThat(found.coverage95High()).isCloseTo(0.993690536, within(1e-6));
    }

    @Test
    void asks_for_as_many_forecasts_as_outcomes() {
        assertThat(faultyFields(
                        new ForecastScore().of(new ForecastScore.Inputs(List.of(1.0, 2.0), List.of(List.of(1.0))))))
                .containsExactly("samples");
        assertThat(faultyFields(new ForecastScore().of(new ForecastScore.Inputs(List.of(), List.of(List.of())))))
                .containsExactly("outcomes", "samples[0]");
    }

    private static double crps(double outcome) {
        return Crps.plain(new double[] {10, 12, 13, 15, 20}, outcome);
    }
}

package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.measurement.Drift;
import wainbook.engineering.measurement.Drift.Results;

/** Numbers without another source were worked by hand from the textbook's prediction interval. */
class DriftTest {

    private static final List<Double> DAYS = List.of(0.0, 181.0, 365.0, 547.0, 730.0, 915.0);
    private static final List<Double> ERRORS = List.of(0.3, 0.7, 0.9, 1.5, 1.7, 2.3);

    /** NIST StRD, linear regression, data set Norris: 36 pairs and certified values, read in open-source tests. */
    @Test
    void norris() {
        Results found = results(new Drift()
                .of(new Drift.Inputs(
                        numbers(
                                ".2 337.4 118.2 884.6 10.1 226.5 666.3 996.3 448.6 777.0 558.2 .4 .6 775.5 666.9 338.0 447.5 11.6"
                                        + " 556.0 228.1 995.8 887.6 120.2 .3 .3 556.8 339.1 887.2 999.0 779.0 11.1 118.3 229.2 669.1"
                                        + " 448.9 .5"),
                        numbers(
                                ".1 338.8 118.1 888.0 9.2 228.1 668.5 998.5 449.1 778.9 559.2 .3 .1 778.1 668.8 339.3 448.9 10.8"
                                        + " 557.7 228.3 998.0 888.8 119.6 .3 .6 557.6 339.3 888.0 998.5 778.9 10.2 117.6 228.9 668.4"
                                        + " 449.2 .2"),
                        1000,
                        Optional.empty())));

        assertThat(found.slopePerDay()).isCloseTo(1.00211681802045, within(1e-11));
        assertThat(found.intercept()).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(found.slopeError()).isCloseTo(0.000429796848, within(1e-12));
        assertThat(found.interceptError()).isCloseTo(0.232818234302, within(1e-9));
        assertThat(found.residualS()).isCloseTo(0.8847963961, within(1e-9));
        assertThat(found.r2()).isCloseTo(0.999993745883712, within(1e-12));
        assertThat(found.trendShown()).isTrue();
    }

    @Test
    void line_through_six_calibrations() {
        Results found = drift(4, Optional.of(1100.0));

        assertThat(found.slopePerDay()).isCloseTo(0.0021238730614608924, within(1e-12));
        assertThat(found.intercept()).isCloseTo(0.2641392596200126, within(1e-12));
        assertThat(found.residualS()).isCloseTo(0.11239137777074967, within(1e-12));
        assertThat(found.r2()).isCloseTo(0.98123987, within(1e-8));
        assertThat(found.pSlope()).isCloseTo(0.000133, within(5e-7));
        assertThat(found.predictedLower().orElseThrow()).isCloseTo(2.173244059387287, within(1e-9));
        assertThat(found.predicted().orElseThrow()).isCloseTo(2.6003996272269942, within(1e-9));
        assertThat(found.predictedUpper().orElseThrow()).isCloseTo(3.0275551950667015, within(1e-9));
        assertThat(found.trendShown()).isTrue();
    }

    /** Where the upper end of a 95 % interval meets what is permitted, one in forty lies beyond it, and a trace on the far side. */
    @Test
    void odds_of_being_found_outside() {
        assertThat(drift(4, Optional.of(1502.965416137886)).oddsOutside().orElseThrow())
                .isBetween(0.025, 0.02501);
        assertThat(drift(4, Optional.of(1758.985)).oddsOutside().orElseThrow()).isCloseTo(0.5, within(1e-4));
        assertThat(drift(4, Optional.of(930.0)).oddsOutside().orElseThrow()).isLessThan(1e-3);
    }

    @ParameterizedTest
    @CsvSource({"4.0, 1502.965416137886, 1758.985", "3.1, 1130.4653349380649, 1335.231"})
    void day_on_which_what_is_permitted_is_left(double permitted, double earliest, double central) {
        Results found = drift(permitted, Optional.empty());

        assertThat(found.earliestDay().orElseThrow()).isCloseTo(earliest, within(1e-4));
        assertThat(found.centralDay().orElseThrow()).isCloseTo(central, within(1e-3));
        assertThat(found.predicted()).isEmpty();
    }

    @Test
    void an_error_that_falls_leaves_on_the_other_side_on_the_same_day() {
        var falling =
                new Drift.Inputs(DAYS, ERRORS.stream().map(error -> -error).toList(), 4, Optional.empty());

        assertThat(results(new Drift().of(falling)).earliestDay().orElseThrow())
                .isCloseTo(1502.965416137886, within(1e-4));
    }

    @Test
    void three_calibrations_and_a_level_run_show_no_trend() {
        assertThat(of(List.of(0.0, 100.0, 200.0), List.of(1.0, 2.0, 3.0)).trendShown())
                .isFalse();
        assertThat(of(List.of(0.0, 1.0, 2.0, 3.0), List.of(1.0, -1.0, 1.0, -1.0))
                        .trendShown())
                .isFalse();
        assertThat(of(List.of(0.0, 1.0, 2.0, 3.0), List.of(1.0, 1.0, 1.0, 1.0)).trendShown())
                .isFalse();
        assertThat(of(List.of(0.0, 1.0, 2.0, 3.0), List.of(1.0, 1.0, 1.0, 1.0)).r2())
                .isZero();
        assertThat(of(List.of(0.0, 100.0, 200.0, 300.0), List.of(1.0, 2.0, 3.0, 4.0))
                        .trendShown())
                .isTrue();
    }

    @Test
    void where_the_scatter_is_wider_than_what_is_permitted_there_is_no_day_of_leaving() {
        Results found = results(new Drift()
                .of(new Drift.Inputs(
                        List.of(0.0, 1.0, 2.0, 3.0), List.of(1.0, -1.0, 1.0, -1.2), 0.1, Optional.empty())));

        assertThat(found.earliestDay()).isEmpty();
    }

    @Test
    void a_perfect_line_leaves_on_its_own_day() {
        Results found = results(new Drift()
                .of(new Drift.Inputs(List.of(0.0, 1.0, 2.0, 3.0), List.of(0.0, 1.0, 2.0, 3.0), 4, Optional.of(4.0))));

        assertThat(found.earliestDay()).contains(4.0);
        assertThat(found.predictedUpper()).contains(4.0);
    }

    /** Exact whole numbers so far from nought that a sum of squares without its mean taken off would lose them; by hand. */
    @Test
    void days_and_errors_far_from_nought_keep_their_digits() {
        List<Double> near = List.of(0.0, 2.0, 4.0, 6.0);
        List<Double> far = near.stream().map(one -> 6e15 + one).toList();

        assertThat(of(far, List.of(1.0, 2.0, 3.0, 4.0)).slopePerDay()).isEqualTo(0.5);
        assertThat(of(List.of(0.0, 1.0, 2.0, 3.0), far).slopePerDay()).isEqualTo(2);
        assertThat(of(List.of(0.0, 1.0, 2.0, 3.0), far).r2()).isEqualTo(1);
    }

    /** Invented calibrations, seeded: on the earliest day the prediction just reaches what is permitted, and on no day before. */
    @ParameterizedTest
    @ValueSource(doubles = {-1, 1})
    void on_the_earliest_day_the_prediction_just_reaches_what_is_permitted(double side) {
        var random = new SplittableRandom(67);
        for (int i = 0; i < 200; i++) {
            double start = random.nextDouble(-3, 8);
            double noise = random.nextDouble(0.01, 0.4);
            List<Double> errors = DAYS.stream()
                    .map(day -> side * (start + 0.002 * day + noise * random.nextDouble(-1, 1)))
                    .toList();
            Results found = results(new Drift().of(new Drift.Inputs(DAYS, errors, 4, Optional.empty())));
            if (found.earliestDay().isPresent()) {
                double day = found.earliestDay().get();
                assertThat(reached(errors, day)).isCloseTo(4, within(1e-6));
                assertThat(reached(errors, day - 1)).isLessThan(4);
                assertThat(reached(errors, day + 1)).isGreaterThan(4);
            } else {
                DAYS.forEach(day -> assertThat(reached(errors, day)).isGreaterThan(4));
            }
        }
    }

    private static double reached(List<Double> errors, double day) {
        Results found = results(new Drift().of(new Drift.Inputs(DAYS, errors, 4, Optional.of(day))));
        return found.slopePerDay() < 0
                ? -found.predictedLower().orElseThrow()
                : found.predictedUpper().orElseThrow();
    }

    /** 1 % in a hundred days from 1 %: 4 % on day 300. */
    @Test
    void a_line_without_any_scatter_is_outside_for_sure_or_surely_not() {
        List<Double> days = List.of(0.0, 100.0, 200.0, 300.0);
        assertThat(odds(days, List.of(1.0, 2.0, 3.0, 4.0), 4, 300)).isZero();
        assertThat(odds(days, List.of(1.0, 2.0, 3.0, 4.0), 4, 301)).isEqualTo(1);
        assertThat(odds(days, List.of(-1.0, -2.0, -3.0, -4.0), 4, 301)).isEqualTo(1);
    }

    private static double odds(List<Double> days, List<Double> errors, double permitted, double day) {
        return results(new Drift().of(new Drift.Inputs(days, errors, permitted, Optional.of(day))))
                .oddsOutside()
                .orElseThrow();
    }

    @Test
    void days_without_an_error_and_days_all_alike_are_faults() {
        var drift = new Drift();
        assertThat(faultyFields(drift.of(new Drift.Inputs(DAYS, List.of(1.0, 2.0, 3.0), 4, Optional.empty()))))
                .containsExactly("errorPercent");
        assertThat(faultyFields(drift.of(
                        new Drift.Inputs(List.of(1.0, 1.0, 1.0), List.of(1.0, 2.0, 3.0), 4, Optional.empty()))))
                .containsExactly("days");
    }

    private static Results drift(double permitted, Optional<Double> atDay) {
        return results(new Drift().of(new Drift.Inputs(DAYS, ERRORS, permitted, atDay)));
    }

    private static Results of(List<Double> days, List<Double> errors) {
        return results(new Drift().of(new Drift.Inputs(days, errors, 10, Optional.empty())));
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }
}

package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.measurement.IndividualsChart;
import wainbook.engineering.measurement.IndividualsChart.Results;
import wainbook.engineering.measurement.IndividualsChart.Signal;

class IndividualsChartTest {

    private static final List<Integer> ALL = List.of(1, 2, 3, 5);

    /**
     * Flow rates of NIST/SEMATECH e-Handbook 6.3.2.2 as public test data credit it. The handbook divides by d2 = 1.128
     * (55.8041 and 45.8159), we by its rounded reciprocal 2.66: a difference of 0.0008.
     */
    @Test
    void flow_rates_of_the_handbook() {
        Results found = chart(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);

        assertThat(found.centre()).isCloseTo(50.81, within(1e-9));
        assertThat(found.movingRangeMean()).isCloseTo(1.877778, within(1e-6));
        assertThat(found.movingRangeUpper()).isCloseTo(6.1347, within(1e-4));
        assertThat(found.upper()).isCloseTo(55.8041, within(1e-3));
        assertThat(found.lower()).isCloseTo(45.8159, within(1e-3));
        assertThat(found.signals()).isEmpty();
    }

    /** Ten tightenings of six joints in percent of their half tolerance; by hand. */
    @Test
    void mixed_joints_on_one_chart() {
        Results found = chart(
                140 / 12.0,
                -40 / 3.0,
                -110 / 12.0,
                200 / 9.0,
                50 / 3.0,
                230 / 12.0,
                24,
                -140 / 9.0,
                -10 / 3.0,
                20 / 3.0);

        assertThat(found.centre()).isCloseTo(5.9, within(1e-9));
        assertThat(found.movingRangeMean()).isCloseTo(15.024691, within(1e-6));
        assertThat(found.upper()).isCloseTo(45.8657, within(1e-4));
        assertThat(found.lower()).isCloseTo(-34.0657, within(1e-4));
        assertThat(found.movingRangeUpper()).isCloseTo(49.0857, within(1e-4));
    }

    @Test
    void a_point_beyond_its_limit_is_a_signal() {
        double[] values = DoubleStream.concat(
                        DoubleStream.iterate(0, last -> 1 - last).limit(20), DoubleStream.of(9))
                .toArray();
        assertThat(chart(values).signals()).contains(new Signal(20, 1));
    }

    @Test
    void the_ninth_point_on_one_side_is_a_signal_and_the_eighth_is_not() {
        double[] low = {-3, -1, -3, -1, -3, -1, -3, -1};
        assertThat(signals(
                        2,
                        DoubleStream.concat(DoubleStream.of(low), DoubleStream.of(1, 3, 1, 3, 1, 3, 1, 3))
                                .toArray()))
                .isEmpty();
        assertThat(signals(
                        2,
                        DoubleStream.concat(
                                        DoubleStream.concat(DoubleStream.of(low), DoubleStream.of(-2)),
                                        DoubleStream.of(1, 3, 1, 3, 1, 3, 1, 3, 2))
                                .toArray()))
                .containsExactly(new Signal(8, 2), new Signal(17, 2));
    }

    @Test
    void the_sixth_point_of_a_climb_is_a_signal_and_equal_points_break_it() {
        assertThat(signals(3, 5, 1, 2, 3, 4, 5, 6, 3)).containsExactly(new Signal(6, 3));
        assertThat(signals(3, 5, 1, 2, 3, 3, 4, 5, 3)).isEmpty();
    }

    @Test
    void the_fifteenth_point_within_one_sigma_is_too_good_and_the_fourteenth_is_not() {
        double[] first = {-2, -2, 2, 2, -2, -2, 2, 2, -2, -2, 2, 2, -2, -2, 2, 2, -2, -2, 2, 2};
        double[] fourteen = DoubleStream.iterate(-0.5, last -> -last).limit(14).toArray();

        assertThat(signals(7, first, fourteen)).isEmpty();
        assertThat(signals(7, first, fourteen, new double[] {0.5})).containsExactly(new Signal(34, 7));
    }

    @Test
    void limits_from_the_first_values_are_held() {
        List<Double> values = listed(1, 3, 1, 3, 9, 9);
        Results found =
                results(new IndividualsChart().of(new IndividualsChart.Inputs(values, List.of(1), Optional.of(4))));

        assertThat(found.centre()).isEqualTo(2);
        assertThat(found.upper()).isCloseTo(2 + 2.66 * 2, within(1e-9));
        assertThat(found.signals()).extracting(Signal::index).containsExactly(4, 5);
    }

    @Test
    void limits_cannot_come_from_more_values_than_there_are() {
        var asked = new IndividualsChart.Inputs(listed(1, 2, 3), List.of(1), Optional.of(4));
        assertThat(new IndividualsChart()
                        .of(asked)
                        .<Integer>fold(worked -> 0, faults -> faults.size(), impossible -> 0))
                .isEqualTo(1);
    }

    @Test
    void rules_that_are_not_asked_say_nothing() {
        assertThat(signals(1, 5, 1, 2, 3, 4, 5, 6, 3)).isEmpty();
    }

    @Test
    void values_that_are_all_the_same_have_no_signal() {
        assertThat(chart(7, 7, 7, 7, 7, 7, 7, 7, 7, 7).signals()).isEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void another_unit_or_zero_changes_no_signal(long seed) {
        var random = new Random(seed);
        double[] values = random.doubles(60).map(one -> Math.round(one * 40)).toArray();
        double[] moved = DoubleStream.of(values).map(one -> 64 - 0.5 * one).toArray();

        assertThat(chart(moved).signals()).isEqualTo(chart(values).signals());
    }

    private static List<Signal> signals(int rule, double[]... parts) {
        return signals(rule, Stream.of(parts).flatMapToDouble(DoubleStream::of).toArray());
    }

    private static List<Signal> signals(int rule, double... values) {
        return results(new IndividualsChart().of(new IndividualsChart.Inputs(listed(values), List.of(rule))))
                .signals();
    }

    private static Results chart(double... values) {
        return results(new IndividualsChart().of(new IndividualsChart.Inputs(listed(values), ALL)));
    }

    private static List<Double> listed(double... values) {
        return Stream.of(values).flatMap(all -> DoubleStream.of(all).boxed()).toList();
    }
}

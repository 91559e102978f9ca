package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.Answer;
import wainbook.engineering.statistics.AttributeChart;
import wainbook.engineering.statistics.AttributeChart.Kind;
import wainbook.engineering.statistics.AttributeChart.Point;
import wainbook.engineering.statistics.Cusum;
import wainbook.engineering.statistics.Ewma;
import wainbook.engineering.statistics.ShortRun;
import wainbook.engineering.statistics.SubgroupChart;
import wainbook.engineering.statistics.SubgroupChart.Scatter;

/** Charts of NIST/SEMATECH e-Handbook 6.3, as public test data credit them, and others as said. */
class ControlChartsTest {

    /** 6.3.2.4: target 50, s 2.0539, λ 0.3; limits printed as 52.5884 and 47.4115, last average 51.9882. */
    @Test
    void weighted_moving_average_of_the_handbook() {
        var found = results(new Ewma()
                .of(new Ewma.Inputs(
                        numbers(
                                "52.0 47.0 53.0 49.3 50.1 47.0 51.0 50.1 51.2 50.5 49.6 47.6 49.9 51.3 47.8 51.2 52.6 52.4"
                                        + " 53.6 52.1"),
                        50,
                        2.0539,
                        0.3,
                        3)));

        assertThat(found.upper()).isCloseTo(52.588431738126616, within(1e-9));
        assertThat(found.lower()).isCloseTo(47.411568261873384, within(1e-9));
        assertThat(found.averages().subList(0, 6))
                .usingComparatorForType((one, other) -> Math.abs(one - other) < 5e-5 ? 0 : 1, Double.class)
                .containsExactly(50.60, 49.52, 50.564, 50.1848, 50.1594, 49.2116);
        assertThat(found.averages().get(19)).isCloseTo(51.9882, within(5e-5));
        assertThat(found.signalsAt()).isEmpty();
    }

    @Test
    void an_average_beyond_its_limits_is_a_signal() {
        var found = results(new Ewma().of(new Ewma.Inputs(List.of(50.0, 60.0, 50.0, 35.0), 50, 2, 0.3, 3)));

        assertThat(found.signalsAt()).containsExactly(1, 3);
    }

    /** 6.3.2.3, its data from memory: target 325, k 0.3175, h 4.1959; the sums follow by hand. */
    @Test
    void cumulative_sums_of_the_handbook() {
        var found = results(new Cusum()
                .of(new Cusum.Inputs(
                        numbers(
                                "324.925 324.675 324.725 324.350 325.350 325.225 324.125 324.525 325.225 324.600 324.625"
                                        + " 325.150 328.325 327.250 327.825 328.500 326.675 327.775 326.875 328.350"),
                        325,
                        0.3175,
                        4.1959)));

        assertThat(found.sums().get(12).up()).isCloseTo(3.0075, within(1e-9));
        assertThat(found.sums().get(13).up()).isCloseTo(4.94, within(1e-9));
        assertThat(found.sums().get(19).up()).isCloseTo(19.035, within(1e-9));
        assertThat(found.sums().get(7).down()).isCloseTo(0.715, within(1e-9));
        assertThat(found.signalsAt()).containsExactly(13, 14, 15, 16, 17, 18, 19);
    }

    @Test
    void a_fall_is_summed_as_a_rise_is_and_a_sum_at_its_decision_value_is_no_signal() {
        var found = results(new Cusum().of(new Cusum.Inputs(List.of(9.0, 9.0, 9.0), 10, 0.5, 1)));

        assertThat(found.sums().get(2).down()).isEqualTo(1.5);
        assertThat(found.sums().get(2).up()).isZero();
        assertThat(found.signalsAt()).containsExactly(2);
    }

    /** 6.3.3.2: thirty samples of fifty wafers; p̄ 0.231333, limits 0.410239 and 0.052428, samples 15 and 23 out. */
    @Test
    void share_of_faulty_wafers_of_the_handbook() {
        List<Integer> counts = whole("12 15 8 10 4 7 16 9 14 10 5 6 17 12 22 8 10 5 13 11 20 18 24 15 9 12 7 13 9 6");
        var found = results(
                new AttributeChart().of(new AttributeChart.Inputs(Kind.P, counts, Collections.nCopies(30, 50))));

        assertThat(found.centre()).isCloseTo(0.23133333333333334, within(1e-12));
        assertThat(found.points().get(0).upper()).isCloseTo(0.41023911859473844, within(1e-12));
        assertThat(found.points().get(0).lower()).isCloseTo(0.05242754807192823, within(1e-12));
        assertThat(found.beyond()).containsExactly(14, 22);
    }

    /** 6.3.3.1: faults on 25 wafers; c̄ 16, limits 28 and 4; the third lies on its limit, the 24th beyond. */
    @Test
    void faults_on_wafers_of_the_handbook() {
        List<Integer> counts = whole("16 14 28 16 12 20 10 12 10 17 19 17 14 16 15 13 14 16 11 20 11 19 16 31 13");
        var found = results(new AttributeChart().of(new AttributeChart.Inputs(Kind.C, counts, List.of())));

        assertThat(found.centre()).isEqualTo(16);
        assertThat(found.points().get(0).upper()).isEqualTo(28);
        assertThat(found.points().get(0).lower()).isEqualTo(4);
        assertThat(found.beyond()).containsExactly(23);
    }

    /** Samples of different size, by hand: upper limits as share of faulty pieces and as faults a piece. */
    @ParameterizedTest
    @CsvSource({
        "P, 0.11337 0.10988 0.11608 0.10693 0.11143 0.10884",
        "U, 0.11503 0.11145 0.11782 0.10841 0.11304 0.11038"
    })
    void each_sample_has_limits_of_its_size(Kind kind, String uppers) {
        var found = results(new AttributeChart()
                .of(new AttributeChart.Inputs(kind, whole("5 4 9 3 14 6"), whole("120 135 110 150 128 140"))));

        assertThat(found.centre()).isCloseTo(0.05236270753512133, within(1e-12));
        assertThat(found.points().stream().map(Point::upper))
                .usingComparatorForType((one, other) -> Math.abs(one - other) < 6e-6 ? 0 : 1, Double.class)
                .containsExactlyElementsOf(numbers(uppers));
        assertThat(found.beyond()).isEmpty();
        assertThat(found.points()).allMatch(point -> point.lower() == 0);
    }

    @Test
    void samples_without_size_and_more_faulty_pieces_than_pieces_are_faults() {
        var chart = new AttributeChart();

        assertThat(faultyFields(chart.of(new AttributeChart.Inputs(Kind.U, List.of(1, 2), List.of(5)))))
                .containsExactly("sizes");
        assertThat(faultyFields(chart.of(new AttributeChart.Inputs(Kind.C, List.of(1, 2), List.of(5, 5)))))
                .containsExactly("sizes");
        assertThat(faultyFields(chart.of(new AttributeChart.Inputs(Kind.P, List.of(1, 6), List.of(5, 5)))))
                .containsExactly("counts[1]");
    }

    /** Piston rings: X̿ 74.001176, R̄ 0.02276; limits printed with A2 0.577 and D4 2.115, Cp 1.70 and Cpk 1.66 with d2 2.326. */
    @Test
    void piston_rings_by_ranges() {
        var found = results(rings(Scatter.RANGE));

        assertThat(found.centre()).isCloseTo(74.001176, within(1e-9));
        assertThat(found.scatterMean()).isCloseTo(0.02276, within(1e-12));
        assertThat(found.upper()).isCloseTo(74.014309, within(1e-5));
        assertThat(found.lower()).isCloseTo(73.988043, within(1e-5));
        assertThat(found.scatterUpper()).isCloseTo(0.0481374, within(2e-5));
        assertThat(found.scatterLower()).isZero();
        assertThat(found.cp().orElseThrow()).isCloseTo(1.7032806092559973, within(1e-4));
        assertThat(found.cpk().orElseThrow()).isCloseTo(1.663219449326167, within(1e-4));
        assertThat(found.beyond()).isEmpty();
    }

    /** The same by standard deviations: S̄ 0.0092400366, limits 74.014362 and 73.987990 with A3 rounded to 1.427. */
    @Test
    void piston_rings_by_standard_deviations() {
        var found = results(rings(Scatter.DEVIATION));

        assertThat(found.scatterMean()).isCloseTo(0.009240036602285536, within(1e-12));
        assertThat(found.upper()).isCloseTo(74.014362, within(3e-6));
        assertThat(found.lower()).isCloseTo(73.987990, within(3e-6));
        assertThat(found.beyond()).isEmpty();
    }

    /**
     * Factors d2, A2, D3, D4, A3, B3, B4 for groups of 2 to 25: textbook tables as a statistics package derives them, to four
     * places. Two groups with a mean scatter of 1 about a mean of 0 show them.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 1.1284, 1.8800, 0, 3.2665, 2.6587, 0, 3.2665",
        "3, 1.6926, 1.0233, 0, 2.5746, 1.9544, 0, 2.5682",
        "4, 2.0588, 0.7286, 0, 2.2820, 1.6281, 0, 2.2660",
        "5, 2.3259, 0.5768, 0, 2.1145, 1.4273, 0, 2.0890",
        "6, 2.5344, 0.4832, 0, 2.0038, 1.2871, 0.0304, 1.9696",
        "7, 2.7044, 0.4193, 0.0757, 1.9243, 1.1819, 0.1177, 1.8823",
        "10, 3.0775, 0.3083, 0.2230, 1.7770, 0.9754, 0.2837, 1.7163",
        "15, 3.4718, 0.2231, 0.3466, 1.6534, 0.7885, 0.4282, 1.5718",
        "25, 3.9306, 0.1526, 0.4593, 1.5407, 0.6063, 0.5648, 1.4352"
    })
    void chart_factors(int n, double d2, double a2, double d3, double d4, double a3, double b3, double b4) {
        List<List<Double>> groups = Collections.nCopies(2, ends(n));
        var range = results(chart(groups, Scatter.RANGE));
        var deviation = results(chart(groups, Scatter.DEVIATION));

        assertThat(range.scatterMean() / range.sigma()).isCloseTo(d2, within(6e-5));
        assertThat((range.upper() - range.centre()) / range.scatterMean()).isCloseTo(a2, within(6e-5));
        assertThat(range.scatterLower() / range.scatterMean()).isCloseTo(d3, within(6e-5));
        assertThat(range.scatterUpper() / range.scatterMean()).isCloseTo(d4, within(6e-5));
        assertThat((deviation.centre() - deviation.lower()) / deviation.scatterMean())
                .isCloseTo(a3, within(6e-5));
        assertThat(deviation.scatterLower() / deviation.scatterMean()).isCloseTo(b3, within(6e-5));
        assertThat(deviation.scatterUpper() / deviation.scatterMean()).isCloseTo(b4, within(6e-5));
    }

    @Test
    void a_group_beyond_by_its_mean_or_by_its_scatter_is_named() {
        List<List<Double>> groups = new ArrayList<>(Collections.nCopies(20, List.of(-1.0, 1.0)));
        groups.add(List.of(9.0, 11.0));
        groups.add(List.of(-9.0, 9.0));

        assertThat(results(chart(groups, Scatter.RANGE)).beyond()).containsExactly(20, 21);
    }

    @Test
    void groups_that_differ_in_size_are_faults_and_groups_without_spread_are_not_believed() {
        var chart = new SubgroupChart();

        assertThat(faultyFields(chart(List.of(List.of(1.0, 2.0), List.of(1.0, 2.0, 3.0)), Scatter.RANGE)))
                .containsExactly("groups[1]");
        assertThat(refusal(chart(List.of(List.of(1.0, 1.0), List.of(2.0, 2.0)), Scatter.RANGE)))
                .isEqualTo("nothing-varies");
        assertThat(faultyFields(chart.of(new SubgroupChart.Inputs(
                        List.of(List.of(1.0, 2.0), List.of(1.0, 2.0)),
                        Scatter.RANGE,
                        Optional.of(2.0),
                        Optional.of(2.0)))))
                .containsExactly("upperLimit");
    }

    @Test
    void one_limit_gives_cpk_alone() {
        var found = results(new SubgroupChart()
                .of(new SubgroupChart.Inputs(
                        PistonRings.groups(), Scatter.RANGE, Optional.of(73.95), Optional.empty())));

        assertThat(found.cp()).isEmpty();
        assertThat(found.cpk().orElseThrow()).isCloseTo((74.001176 - 73.95) / (3 * found.sigma()), within(1e-9));
    }

    /** Ten tightenings of three joints in percent of half their tolerance; by hand. */
    @Test
    void different_joints_on_one_chart() {
        var found = results(new ShortRun()
                .of(new ShortRun.Inputs(
                        numbers("121.4 59.2 118.9 184.0 61.0 122.3 25.9 177.2 119.6 60.4"),
                        numbers("120 60 120 180 60 120 25 180 120 60"),
                        numbers("12 6 12 18 6 12 3.75 18 12 6"))));

        assertThat(found.standardised())
                .usingComparatorForType((one, other) -> Math.abs(one - other) < 6e-5 ? 0 : 1, Double.class)
                .containsExactly(
                        11.6667, -13.3333, -9.1667, 22.2222, 16.6667, 19.1667, 24.0, -15.5556, -3.3333, 6.6667);
        assertThat(found.centre()).isCloseTo(5.9, within(1e-9));
        assertThat(found.movingRangeMean()).isCloseTo(15.024691358024691, within(1e-9));
        assertThat(found.upper()).isCloseTo(45.86567901, within(1e-6));
        assertThat(found.lower()).isCloseTo(-34.06567901, within(1e-6));
        assertThat(found.movingRangeUpper()).isCloseTo(49.0857, within(1e-4));
        assertThat(found.beyond()).isEmpty();
    }

    @Test
    void a_reading_beyond_the_limits_of_the_others_is_named() {
        List<Double> readings = new ArrayList<>(Collections.nCopies(20, 100.0));
        readings.set(10, 101.0);
        readings.add(140.0);
        List<Double> same = Collections.nCopies(21, 100.0);

        assertThat(results(new ShortRun().of(new ShortRun.Inputs(readings, same, Collections.nCopies(21, 10.0))))
                        .beyond())
                .containsExactly(20);
    }

    @Test
    void a_reading_without_nominal_or_tolerance_is_a_fault() {
        assertThat(faultyFields(new ShortRun()
                        .of(new ShortRun.Inputs(List.of(1.0, 2.0, 3.0), List.of(1.0, 2.0), List.of(1.0, 2.0)))))
                .containsExactly("nominals", "halfTolerances");
    }

    /** Symmetric values of spread 2 about 0, so that range and standard deviation are those of both ends. */
    private static List<Double> ends(int n) {
        List<Double> values = new ArrayList<>(Collections.nCopies(n, 0.0));
        values.set(0, -1.0);
        values.set(n - 1, 1.0);
        return values;
    }

    private static Answer<SubgroupChart.Results> rings(Scatter scatter) {
        return new SubgroupChart()
                .of(new SubgroupChart.Inputs(PistonRings.groups(), scatter, Optional.of(73.95), Optional.of(74.05)));
    }

    private static Answer<SubgroupChart.Results> chart(List<List<Double>> groups, Scatter scatter) {
        return new SubgroupChart().of(new SubgroupChart.Inputs(groups, scatter, Optional.empty(), Optional.empty()));
    }

    private static List<Double> numbers(String text) {
        return Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }

    private static List<Integer> whole(String text) {
        return Arrays.stream(text.split(" ")).map(Integer::valueOf).toList();
    }
}

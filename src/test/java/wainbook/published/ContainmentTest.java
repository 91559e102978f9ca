package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.Containment.Doubt;
import wainbook.engineering.measurement.Containment.Judged;
import wainbook.engineering.measurement.Containment.Reading;
import wainbook.engineering.measurement.ErrorPoint;

/**
 * ISO 9001:2015 7.1.5.2 asks what an unfit instrument did to earlier results, and gives no method: no published example was
 * found. A wrench 40 to 200 N·m with errors of 0.8, 1.0 and 1.2 % when good, 2.9, 5.0 and 6.1 % as found after 35 days, and
 * 0.5 % uncertainty; worked by hand.
 */
class ContainmentTest {

    private static final List<ErrorPoint> GOOD = points(0.8, 1.0, 1.2);
    private static final List<ErrorPoint> FOUND = points(2.9, 5.0, 6.1);

    @ParameterizedTest
    @CsvSource({
        "2, 108, 132, 121.4, 120.19, 119.92, 115.60, 115.02, 120.79, SAFE",
        "4, 162, 198, 181.0, 178.94, 178.00, 171.01, 170.16, 179.83, SAFE",
        "6, 54, 66, 60.2, 59.69, 59.43, 58.20, 57.91, 59.99, SAFE",
        "9, 108, 132, 112.0, 110.91, 109.85, 106.88, 106.35, 111.47, POSSIBLE",
        "12, 108, 132, 118.9, 117.73, 116.16, 113.27, 112.70, 118.31, SAFE",
        "15, 54, 66, 55.6, 55.14, 54.56, 53.82, 53.55, 55.41, POSSIBLE",
        "18, 162, 198, 166.5, 164.66, 160.96, 157.61, 156.82, 165.49, POSSIBLE",
        "21, 108, 132, 119.6, 118.42, 115.67, 113.92, 113.35, 119.01, SAFE",
        "25, 108, 132, 113.1, 112.00, 109.04, 107.90, 107.36, 112.56, POSSIBLE",
        "28, 162, 198, 169.8, 167.91, 162.07, 160.67, 159.86, 168.75, POSSIBLE",
        "31, 108, 132, 108.2, 107.16, 103.77, 103.35, 102.84, 107.70, SURE_OUT",
        "34, 54, 66, 54.9, 54.44, 53.19, 53.15, 52.88, 54.72, POSSIBLE"
    })
    void each_reading_is_worked_back(
            double day,
            double lower,
            double upper,
            double nm,
            double best,
            double linear,
            double worst,
            double low,
            double high,
            Doubt doubt) {
        Judged judged = judged(GOOD, FOUND, new Reading("n", day, nm, lower, upper));

        assertThat(judged.best()).isCloseTo(best, within(0.006));
        assertThat(judged.linear()).isCloseTo(linear, within(0.006));
        assertThat(judged.worst()).isCloseTo(worst, within(0.006));
        assertThat(judged.low()).isCloseTo(low, within(0.006));
        assertThat(judged.high()).isCloseTo(high, within(0.006));
        assertThat(judged.verdict()).isEqualTo(doubt);
    }

    @Test
    void an_error_that_changed_its_sign_may_have_been_none_in_between() {
        Judged judged = judged(points(-2, -2, -2), points(2, 2, 2), new Reading("n", 10, 100, 90, 110));

        assertThat(judged.low()).isCloseTo(100 / 1.02 * 0.995, within(1e-9));
        assertThat(judged.high()).isCloseTo(100 / 0.98 * 1.005, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 40, 73, 120, 160, 200, 250})
    void an_instrument_that_did_not_change_leaves_its_readings_where_they_were(double nm) {
        Judged judged = judged(GOOD, GOOD, new Reading("n", 20, nm, nm * 0.9, nm * 1.1));

        assertThat(judged.best()).isEqualTo(judged.worst()).isEqualTo(judged.linear());
        assertThat(judged.verdict()).isEqualTo(Doubt.SAFE);
    }

    /** Limits 108 and 132: what just reaches a limit keeps to it, and is not surely outside either; by hand. */
    @Test
    void a_reading_that_comes_back_to_just_its_limit() {
        List<ErrorPoint> none = points(0, 0, 0);

        assertThat(exact(none, 108)).isEqualTo(Doubt.SAFE);
        assertThat(exact(none, 132)).isEqualTo(Doubt.SAFE);
        assertThat(exact(points(5, 5, 5), 108)).isEqualTo(Doubt.POSSIBLE);
        assertThat(exact(points(-5, -5, -5), 132)).isEqualTo(Doubt.POSSIBLE);
        assertThat(exact(points(5, 5, 5), 107.9)).isEqualTo(Doubt.SURE_OUT);
        assertThat(exact(points(-5, -5, -5), 132.1)).isEqualTo(Doubt.SURE_OUT);
    }

    @Test
    void the_same_torque_twice_is_no_curve() {
        var twice = List.of(new ErrorPoint(40, 1), new ErrorPoint(40, 2));

        assertThat(faultyFields(new Containment().of(new Containment.Inputs(twice, GOOD, 35, 0, List.of()))))
                .containsExactly("foundAt");
    }

    private static Doubt exact(List<ErrorPoint> found, double nm) {
        var reading = new Reading("n", 10, nm, 108, 132);
        return results(new Containment().of(new Containment.Inputs(found, points(0, 0, 0), 35, 0, List.of(reading))))
                .readings()
                .get(0)
                .verdict();
    }

    @Test
    void points_out_of_order_and_days_outside_the_window_are_faults() {
        var inputs = new Containment.Inputs(
                List.of(new ErrorPoint(120, 1), new ErrorPoint(40, 1)),
                GOOD,
                35,
                0.5,
                List.of(new Reading("n", 36, 100, 110, 90)));

        List<String> fields = new Containment()
                .of(inputs)
                .fold(
                        worked -> List.of(),
                        faults -> faults.stream().map(fault -> fault.field()).toList(),
                        refusal -> List.of());
        assertThat(fields).containsExactly("foundAt", "readings[0].day", "readings[0].upperNm");
    }

    private static Judged judged(List<ErrorPoint> good, List<ErrorPoint> found, Reading reading) {
        return results(new Containment().of(new Containment.Inputs(found, good, 35, 0.5, List.of(reading))))
                .readings()
                .get(0);
    }

    private static List<ErrorPoint> points(double low, double middle, double high) {
        return List.of(new ErrorPoint(40, low), new ErrorPoint(120, middle), new ErrorPoint(200, high));
    }
}

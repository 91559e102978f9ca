package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.Verdict;
import wainbook.engineering.measurement.Calibration;
import wainbook.engineering.measurement.Calibration.Point;
import wainbook.engineering.measurement.Calibration.Pulls;

/**
 * A setting tool 40 to 200 N·m, step 0.1 N·m, reference 0.5 %, spreads 0.40, 0.30, 0.20 and 0.30 %. The form of the
 * uncertainty is that of ISO 6789-2:2017 from memory, its factors not seen in print; the numbers are worked by hand.
 */
class CalibrationTest {

    private static final List<Double> SPREADS = List.of(0.4, 0.3, 0.2, 0.3);
    private static final List<Pulls> PULLS = List.of(
            new Pulls(40, List.of(39.2, 39.5, 39.1, 39.4, 39.3)),
            new Pulls(120, List.of(117.1, 117.6, 117.3, 117.9, 117.4)),
            new Pulls(200, List.of(194.9, 195.6, 195.2, 196.0, 195.3)));

    @ParameterizedTest
    @CsvSource({
        "0, 1.782489, 0.370076, 0.740153, 2.522641",
        "1, 2.162989, 0.329857, 0.659713, 2.822702",
        "2, 2.354520, 0.322103, 0.644205, 2.998726"
    })
    void each_point_of_the_record(int point, double deviation, double w, double expanded, double interval) {
        Point found = results(new Calibration().of(inputs(4))).points().get(point);

        assertThat(found.meanDeviationPercent()).isCloseTo(deviation, within(1e-6));
        assertThat(found.w()).isCloseTo(w, within(1e-6));
        assertThat(found.W()).isCloseTo(expanded, within(1e-6));
        assertThat(found.Wprime()).isCloseTo(interval, within(1e-6));
    }

    @Test
    void a_tool_passes_only_if_error_and_uncertainty_together_are_permitted_at_every_point() {
        assertThat(verdict(new Calibration().of(inputs(4)))).isEqualTo(Verdict.PASS);
        assertThat(verdict(new Calibration().of(inputs(2.9)))).isEqualTo(Verdict.UNDECIDED);
        assertThat(verdict(new Calibration().of(inputs(1.5)))).isEqualTo(Verdict.FAIL);
    }

    @Test
    void a_point_that_fails_counts_before_one_that_is_only_unsure() {
        var unsure = new Pulls(40, List.of(37.0, 43.0, 36.0, 44.0));
        var wrong = new Pulls(120, List.of(117.0, 117.0, 117.0));
        var inputs = new Calibration.Inputs(List.of(unsure, wrong), 2, 0.1, 0.1, List.of());

        assertThat(verdict(new Calibration().of(inputs))).isEqualTo(Verdict.FAIL);
    }

    private static Calibration.Inputs inputs(double permittedPercent) {
        return new Calibration.Inputs(PULLS, permittedPercent, 0.5, 0.1, SPREADS);
    }
}

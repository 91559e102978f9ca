package wainbook.works.instruments.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.act.Reason;
import wainbook.engineering.Verdict;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;

class CalibrationRuleTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final List<CalibrationPoint> NONE = List.of();

    /** ILAC-G8:09/2019 4.2.2: a guard band as wide as the uncertainty on either side of the limit. */
    @ParameterizedTest
    @CsvSource({
        "3.2, 0.8, PASS",
        "-3.2, 0.8, PASS",
        "3.3, 0.8, UNDECIDED",
        "-4.7, 0.8, UNDECIDED",
        "4.9, 0.8, FAIL",
        "-4.9, 0.8, FAIL",
        "4, 0, PASS"
    })
    void a_point_passes_with_all_of_its_uncertainty_against_it(BigDecimal error, BigDecimal w, Verdict verdict) {
        assertThat(PointVerdict.of(point("100", error, w), new BigDecimal(4))).isEqualTo(verdict);
    }

    @Test
    void what_was_not_shown_to_be_good_as_it_came_puts_readings_in_doubt() {
        assertThat(PointVerdict.putsInDoubt(said(points("3.3"), Adjustment.ADJUSTED, points("0.2"))))
                .isTrue();
        assertThat(PointVerdict.putsInDoubt(said(points("0.3"), Adjustment.NONE, NONE)))
                .isFalse();
        assertThat(PointVerdict.putsInDoubt(said(NONE, Adjustment.NONE, NONE))).isFalse();
    }

    @Test
    void one_that_was_put_right_goes_back_into_use() {
        assertThat(keys(said(points("6"), Adjustment.ADJUSTED, points("0.2")))).isEmpty();
    }

    @Test
    void one_that_is_left_out_of_tolerance_does_not_go_back() {
        assertThat(keys(said(points("6"), Adjustment.NONE, NONE))).containsExactly("works.leftUnfit");
        assertThat(keys(said(points("6"), Adjustment.REPAIRED, points("3.5")))).containsExactly("works.leftUnfit");
        assertThat(keys(said(points("6"), Adjustment.WITHDRAWN, NONE))).isEmpty();
    }

    @Test
    void an_adjustment_without_points_as_left_resets_nothing() {
        assertThat(keys(said(points("6"), Adjustment.ADJUSTED, NONE))).contains("works.leftMissing");
        assertThat(keys(said(points("1"), Adjustment.NONE, points("1")))).contains("works.leftWithoutAdjustment");
    }

    @Test
    void points_rise_and_lie_in_the_range_and_are_judged_by_what_is_permitted() {
        var outside = List.of(
                point("120", BigDecimal.ONE, BigDecimal.ONE),
                point("40", BigDecimal.ONE, BigDecimal.ONE),
                point("201", BigDecimal.ONE, BigDecimal.ONE));
        assertThat(keys(said(outside, Adjustment.NONE, NONE)))
                .containsExactlyInAnyOrder("works.pointsNotRising", "works.pointOutsideRange");
        var unjudged = new Calibrated(
                TODAY,
                Optional.of(TODAY.plusDays(1)),
                "C-1",
                Optional.empty(),
                Optional.empty(),
                points("1"),
                Adjustment.NONE,
                NONE,
                Optional.empty());
        assertThat(keys(unjudged)).containsExactly("works.permittedMissing");
    }

    @Test
    void a_certificate_from_before_the_withdrawal_lifts_nothing() {
        Calibrated old = Calibrated.certified(TODAY.minusDays(3), TODAY.plusDays(300), "C-1");
        assertThat(new CalibrationRule(wrench(), new Calibrations(List.of()), Optional.of(TODAY.minusDays(1)), TODAY)
                        .against(old))
                .extracting(Reason::key)
                .containsExactly("works.calibratedBeforeWithdrawal");
    }

    private static List<String> keys(Calibrated said) {
        return new CalibrationRule(wrench(), new Calibrations(List.of()), Optional.empty(), TODAY)
                .against(said).stream().map(Reason::key).toList();
    }

    private static Calibrated said(List<CalibrationPoint> found, Adjustment adjustment, List<CalibrationPoint> left) {
        return new Calibrated(
                TODAY,
                adjustment == Adjustment.WITHDRAWN ? Optional.empty() : Optional.of(TODAY.plusYears(1)),
                "C-1",
                Optional.empty(),
                Optional.of(new BigDecimal(4)),
                found,
                adjustment,
                left,
                Optional.empty());
    }

    private static List<CalibrationPoint> points(String error) {
        return List.of(point("100", new BigDecimal(error), new BigDecimal("0.8")));
    }

    private static CalibrationPoint point(String target, BigDecimal error, BigDecimal w) {
        return new CalibrationPoint(new BigDecimal(target), List.of(), error, w);
    }

    private static Instrument wrench() {
        return new Instrument(
                "TW-1",
                "torque-setting",
                "Wrench",
                "N·m",
                new BigDecimal(40),
                new BigDecimal(200),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}

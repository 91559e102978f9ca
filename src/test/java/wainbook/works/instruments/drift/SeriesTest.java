package wainbook.works.instruments.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.instruments.Calibrations;

/** Six calibrations from 15 January 2024 on, worked by hand from the textbook's line and prediction interval. */
class SeriesTest {

    private static final LocalDate FIRST = LocalDate.of(2024, 1, 15);
    private static final int[] DAYS = {0, 181, 365, 547, 730, 915};
    private static final double[] ERRORS = {0.3, 0.7, 0.9, 1.5, 1.7, 2.3};

    @Test
    void what_is_permitted_less_the_uncertainty_is_what_the_error_may_grow_to() {
        Series series = Series.of(sixCalibrations()).get(0);
        assertThat(series.roomPercent()).isCloseTo(3.1, within(1e-12));
        assertThat(series.on(FIRST.plusDays(1100)).orElseThrow().earliestDay().orElseThrow())
                .isCloseTo(1130.465, within(1e-3));
    }

    @Test
    void on_the_earliest_day_one_in_forty_is_found_outside() {
        assertThat(Series.odds(Series.of(sixCalibrations()), FIRST.plusDays(1130))
                        .orElseThrow())
                .isCloseTo(0.025, within(2e-4));
    }

    @Test
    void an_adjustment_begins_a_new_series_with_what_it_was_left_with() {
        var adjusted = new Calibrations(List.of(
                entry(0, said(0, points(0.3), Adjustment.NONE, List.of())),
                entry(1, said(200, points(3.0), Adjustment.ADJUSTED, points(0.1))),
                entry(2, said(400, points(0.4), Adjustment.NONE, List.of()))));
        Series series = Series.of(adjusted).get(0);
        assertThat(series.errorsPercent()).containsExactly(0.1, 0.4);
        assertThat(series.first()).isEqualTo(FIRST.plusDays(200));
        assertThat(series.on(FIRST.plusDays(500))).isEmpty();
    }

    @Test
    void certificates_without_figures_foretell_nothing() {
        var bare = new Calibrations(List.of(entry(0, Calibrated.certified(FIRST, FIRST.plusDays(365), "C-1"))));
        assertThat(Series.of(bare)).isEmpty();
        assertThat(Series.odds(Series.of(bare), FIRST)).isEmpty();
    }

    private static Calibrations sixCalibrations() {
        return new Calibrations(IntStream.range(0, DAYS.length)
                .mapToObj(i -> entry(i, said(DAYS[i], points(ERRORS[i]), Adjustment.NONE, List.of())))
                .toList());
    }

    private static List<CalibrationPoint> points(double error) {
        return List.of(
                new CalibrationPoint(new BigDecimal(200), List.of(), BigDecimal.valueOf(error), new BigDecimal("0.9")));
    }

    private static Calibrated said(
            int day, List<CalibrationPoint> found, Adjustment adjustment, List<CalibrationPoint> left) {
        return new Calibrated(
                FIRST.plusDays(day),
                Optional.of(FIRST.plusDays(day + 365L)),
                "C-1",
                Optional.empty(),
                Optional.of(new BigDecimal(4)),
                found,
                adjustment,
                left,
                Optional.empty());
    }

    private static Entry entry(int number, Calibrated said) {
        return new Entry(
                new UUID(0, number),
                Subject.instrument("TW-1"),
                number,
                new Moment("1001", Instant.EPOCH, Optional.empty(), Optional.empty()),
                "",
                said);
    }
}

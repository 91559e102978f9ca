package wainbook.quality.containment.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.quality.QualitySaying.Basis;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.containment.doubt.Found.Nature;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Guard;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Verdict;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.ToolChecked;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.InDoubt;

/** Since when an instrument is in doubt, and what its readings are worth: from histories alone. */
class DoubtTest {

    private static final ZoneId ZONE = ZoneId.of("UTC");
    private static final Instant DAY_0 = Instant.parse("2026-03-02T00:00:00Z");
    private static final List<CalibrationPoint> GOOD = points("0.8", "1.0", "1.2", "0.5");
    private static final List<CalibrationPoint> FOUND = points("2.9", "5.0", "6.1", "0.5");
    private static final List<CalibrationPoint> NO_ERROR = points("0", "0", "0", "0");

    private final List<Entry> entries = new ArrayList<>();

    DoubtTest() {
        say(
                0,
                new InstrumentRegistered(
                        "torque-indicating",
                        "Wrench",
                        "N·m",
                        new BigDecimal("40"),
                        new BigDecimal("200"),
                        Optional.of(new BigDecimal("1.6"))));
    }

    @Test
    void doubt_begins_with_the_last_calibration_that_it_passed() {
        calibrated(0, GOOD, List.of());
        calibrated(10, GOOD, List.of());
        Cause cause = because(calibrated(35, FOUND, List.of()));
        assertThat(cause.window().from()).isEqualTo(day(10));
        assertThat(cause.window().to()).isEqualTo(cause.entry().moment().at());
        assertThat(cause.window().basis()).isEqualTo(Basis.CALIBRATED);
        assertThat(cause.errors().orElseThrow().good()).hasSize(3);
        assertThat(cause.errors().orElseThrow().uncertaintyPercent()).isEqualByComparingTo("0.5");
    }

    @Test
    void a_calibration_that_failed_and_was_adjusted_is_good_as_it_was_left() {
        calibrated(0, GOOD, List.of());
        calibrated(10, FOUND, GOOD);
        assertThat(because(calibrated(35, FOUND, List.of())).window().from()).isEqualTo(day(10));
    }

    @Test
    void one_that_was_left_outside_is_not_good() {
        calibrated(0, GOOD, List.of());
        calibrated(10, FOUND, FOUND);
        assertThat(because(calibrated(35, FOUND, List.of())).window().from()).isEqualTo(day(0));
    }

    @Test
    void a_stated_fall_begins_the_window_unless_a_calibration_came_after_it() {
        calibrated(0, GOOD, List.of());
        Cause dropped = because(withdrawn(35, WithdrawalCause.DAMAGED, Optional.of(day(20))));
        assertThat(dropped.window().from()).isEqualTo(day(20));
        assertThat(dropped.window().basis()).isEqualTo(Basis.STATED);

        calibrated(36, GOOD, List.of());
        Cause long_before = because(withdrawn(40, WithdrawalCause.DAMAGED, Optional.of(day(20))));
        assertThat(long_before.window().from()).isEqualTo(day(36));
    }

    @Test
    void used_out_of_date_is_in_doubt_from_the_end_of_its_due_day() {
        calibrated(0, GOOD, List.of());
        Cause cause = because(withdrawn(400, WithdrawalCause.USED_OUT_OF_DATE, Optional.empty()));
        assertThat(cause.window().from()).isEqualTo(day(366));
        assertThat(cause.window().basis()).isEqualTo(Basis.PAST_DUE);
    }

    @Test
    void one_that_was_never_calibrated_is_in_doubt_from_its_registration() {
        Cause cause = because(withdrawn(35, WithdrawalCause.LOST, Optional.empty()));
        assertThat(cause.window().basis()).isEqualTo(Basis.NEVER_GOOD);
        assertThat(cause.window().from()).isEqualTo(entries.get(0).moment().at());
    }

    @Test
    void a_withdrawal_for_another_reason_and_a_calibration_found_fit_put_nothing_in_doubt() {
        assertThat(InDoubt.by(withdrawn(1, WithdrawalCause.OTHER, Optional.empty())))
                .isFalse();
        assertThat(InDoubt.by(calibrated(2, GOOD, List.of()))).isFalse();
        assertThat(InDoubt.by(calibrated(3, FOUND, GOOD))).isTrue();
        assertThat(InDoubt.by(withdrawn(4, WithdrawalCause.LOST, Optional.empty())))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "2, 121.4, 108, 132, SAFE",
        "4, 181.0, 162, 198, SAFE",
        "6, 60.2, 54, 66, SAFE",
        "9, 112.0, 108, 132, POSSIBLE",
        "12, 118.9, 108, 132, SAFE",
        "15, 55.6, 54, 66, POSSIBLE",
        "18, 166.5, 162, 198, POSSIBLE",
        "21, 119.6, 108, 132, SAFE",
        "25, 113.1, 108, 132, POSSIBLE",
        "28, 169.8, 162, 198, POSSIBLE",
        "31, 108.2, 108, 132, SURE_OUT",
        "34, 54.9, 54, 66, POSSIBLE"
    })
    void the_worked_example_comes_out_of_the_instruments_history(
            int day, String read, String lower, String upper, Sureness verdict) {
        calibrated(0, GOOD, List.of());
        Doubt doubt = doubt(because(calibrated(35, FOUND, List.of())));
        assertThat(doubt.judge(reading(day, read, lower, upper), false).verdict())
                .isEqualTo(verdict);
    }

    @Test
    void a_reading_is_kept_with_its_whole_working() {
        calibrated(0, GOOD, List.of());
        Doubted judged =
                doubt(because(calibrated(35, FOUND, List.of()))).judge(reading(31, "108.2", "108", "132"), true);
        assertThat(judged.voided()).isTrue();
        assertThat(judged.ground()).isEqualTo(Ground.WORKED_OUT);
        var worked = judged.worked().orElseThrow();
        assertThat(worked.goodPercent().doubleValue()).isBetween(0.9704, 0.9706);
        assertThat(worked.foundPercent().doubleValue()).isBetween(4.690, 4.691);
        assertThat(worked.worst().doubleValue()).isBetween(103.35, 103.36);
        assertThat(worked.low().doubleValue()).isBetween(102.83, 102.84);
        assertThat(worked.high().doubleValue()).isBetween(107.69, 107.70);
    }

    @ParameterizedTest
    @ValueSource(strings = {"108", "108.001", "115", "120", "131.9", "132"})
    void no_error_puts_nothing_in_doubt(String read) {
        calibrated(0, NO_ERROR, List.of());
        Cause cause = because(withdrawn(35, WithdrawalCause.LOST, Optional.empty()));
        Calibrated none = calibration(40, NO_ERROR, List.of());
        Doubt doubt = Doubt.of(cause.window(), cause.errors(none), history());
        assertThat(doubt.judge(reading(20, read, "108", "132"), false).verdict())
                .isEqualTo(Sureness.SAFE);
    }

    @Test
    void without_figures_as_found_every_reading_is_possible() {
        calibrated(0, GOOD, List.of());
        Doubt doubt = doubt(because(withdrawn(35, WithdrawalCause.LOST, Optional.empty())));
        Doubted judged = doubt.judge(reading(20, "120", "108", "132"), false);
        assertThat(judged.verdict()).isEqualTo(Sureness.POSSIBLE);
        assertThat(judged.ground()).isEqualTo(Ground.NO_FIGURES);
        assertThat(judged.worked()).isEmpty();
    }

    @Test
    void where_only_a_certificate_was_kept_the_band_it_vouched_for_widens_the_range() {
        say(1, Calibrated.certified(LocalDate.of(2026, 3, 2), LocalDate.of(2027, 3, 2), "C-1"));
        Doubt doubt = doubt(because(calibrated(35, FOUND, List.of())));
        Doubted judged = doubt.judge(reading(20, "131", "108", "132"), false);
        // 131 / (1 − 0.016) · 1.005 = 133.80: it may have got more than shown, whatever was found later.
        assertThat(judged.worked().orElseThrow().high().doubleValue()).isBetween(133.79, 133.81);
        assertThat(judged.verdict()).isEqualTo(Sureness.POSSIBLE);
        assertThat(doubt.judge(reading(20, "120", "108", "132"), false).verdict())
                .isEqualTo(Sureness.SAFE);
    }

    @Test
    void a_daily_check_passed_later_vouches_for_readings_near_it_and_for_no_others() {
        calibrated(0, GOOD, List.of());
        checked(20, "120");
        Doubt doubt = doubt(because(calibrated(35, FOUND, List.of())));
        assertThat(doubt.judge(reading(19, "108.2", "108", "132"), false).ground())
                .isEqualTo(Ground.CHECKED_SINCE);
        assertThat(doubt.judge(reading(19, "54.9", "54", "66"), false).verdict())
                .isEqualTo(Sureness.POSSIBLE);
        assertThat(doubt.judge(reading(31, "108.2", "108", "132"), false).verdict())
                .isEqualTo(Sureness.SURE_OUT);
    }

    @Test
    void after_a_stated_fall_no_check_vouches_for_anything() {
        calibrated(0, GOOD, List.of());
        checked(25, "120");
        Doubt doubt = doubt(because(withdrawn(35, WithdrawalCause.DAMAGED, Optional.of(day(20)))));
        assertThat(doubt.judge(reading(22, "120", "108", "132"), false).verdict())
                .isEqualTo(Sureness.POSSIBLE);
    }

    @Test
    void a_limit_with_one_end_is_judged_at_that_end() {
        calibrated(0, GOOD, List.of());
        Doubt doubt = doubt(because(calibrated(35, FOUND, List.of())));
        var bond = new Found.Value(
                "N·m", new BigDecimal("110"), Optional.of(new BigDecimal("108")), Optional.empty(), false);
        assertThat(doubt.judge(found(20, Optional.of(bond), Nature.READING), false)
                        .verdict())
                .isEqualTo(Sureness.POSSIBLE);
        var far = new Found.Value(
                "N·m", new BigDecimal("190"), Optional.of(new BigDecimal("108")), Optional.empty(), false);
        assertThat(doubt.judge(found(20, Optional.of(far), Nature.READING), false)
                        .verdict())
                .isEqualTo(Sureness.SAFE);
    }

    @Test
    void a_proof_of_dead_and_a_reading_in_another_unit_are_possible_and_not_worked_out() {
        calibrated(0, GOOD, List.of());
        Doubt doubt = doubt(because(calibrated(35, FOUND, List.of())));
        assertThat(doubt.judge(found(20, Optional.empty(), Nature.PROOF_OF_DEAD), false)
                        .ground())
                .isEqualTo(Ground.PROOF_OF_DEAD);
        var ohm = new Found.Value(
                "Ω", new BigDecimal("0.05"), Optional.empty(), Optional.of(new BigDecimal("0.1")), true);
        assertThat(doubt.judge(found(20, Optional.of(ohm), Nature.READING), false)
                        .ground())
                .isEqualTo(Ground.NOT_COMPUTABLE);
    }

    @Test
    void a_reading_on_a_limit_that_must_not_be_reached_is_not_safe() {
        calibrated(0, NO_ERROR, List.of());
        Cause cause = because(withdrawn(35, WithdrawalCause.LOST, Optional.empty()));
        Doubt doubt = Doubt.of(cause.window(), cause.errors(calibration(40, NO_ERROR, List.of())), history());
        var on = new Found.Value(
                "N·m", new BigDecimal("132"), Optional.empty(), Optional.of(new BigDecimal("132")), true);
        assertThat(doubt.judge(found(20, Optional.of(on), Nature.READING), false)
                        .verdict())
                .isNotEqualTo(Sureness.SAFE);
    }

    @Test
    void a_residual_torque_is_worked_back_against_limits_of_its_own_and_a_mark_is_possible_as_a_whole() {
        List<Found> residual = new Readings(about -> Optional.empty()).of(rechecked(Optional.of(window("100", "140"))));
        assertThat(residual).hasSize(2).allMatch(found -> found.nature() == Nature.READING);
        assertThat(residual.get(1).value().orElseThrow().upper()).contains(new BigDecimal("140"));
        assertThat(residual.get(1).failedThen()).isTrue();
        List<Found> mark = new Readings(about -> Optional.empty()).of(rechecked(Optional.empty()));
        assertThat(mark).hasSize(1).allMatch(found -> found.nature() == Nature.OTHER && found.gravity() == Gravity.A);
    }

    private static Entry rechecked(Optional<Joint.Window> residualNm) {
        return new Entry(
                new UUID(3, 1),
                Subject.workOrder("WB-1"),
                1,
                Moment.of("7001", DAY_0),
                "0".repeat(64),
                new Rechecked(
                        new About("fitting", "FIT", 1, "a", List.of()),
                        new StationSaying.Basis(Condition.NONE, Optional.empty(), Optional.empty()),
                        "J-1",
                        JointClass.A,
                        residualNm.isPresent() ? CheckWay.RESIDUAL : CheckWay.BY_MARK,
                        new BigDecimal("120"),
                        residualNm,
                        new Guard(BigDecimal.ONE, BigDecimal.ONE),
                        Optional.empty(),
                        List.of(new BigDecimal("118"), new BigDecimal("141")),
                        List.of(),
                        List.of(2),
                        Verdict.FAIL));
    }

    private static Joint.Window window(String lower, String upper) {
        return new Joint.Window(new BigDecimal(lower), new BigDecimal(upper));
    }

    private Doubt doubt(Cause cause) {
        return Doubt.of(cause.window(), cause.errors(), history());
    }

    private Cause because(Entry entry) {
        return Cause.of(history(), entry, ZONE);
    }

    private History history() {
        return new History(Subject.instrument("TW-1"), entries);
    }

    private Entry calibrated(int day, List<CalibrationPoint> found, List<CalibrationPoint> left) {
        return say(day, calibration(day, found, left));
    }

    private static Calibrated calibration(int day, List<CalibrationPoint> found, List<CalibrationPoint> left) {
        LocalDate on = LocalDate.ofInstant(day(day), ZONE);
        return new Calibrated(
                on,
                Optional.of(on.plusDays(365)),
                "C-" + day,
                Optional.empty(),
                Optional.of(new BigDecimal("4")),
                found,
                left.isEmpty() ? Adjustment.NONE : Adjustment.ADJUSTED,
                left,
                Optional.empty());
    }

    private Entry withdrawn(int day, WithdrawalCause cause, Optional<Instant> since) {
        return say(day, new InstrumentWithdrawn(cause, "reason", since));
    }

    private void checked(int day, String target) {
        say(
                day,
                new ToolChecked(
                        "TT-1",
                        new BigDecimal(target),
                        List.of(new BigDecimal(target)),
                        new BigDecimal("1.0"),
                        new BigDecimal("2"),
                        new BigDecimal("4"),
                        true));
    }

    private Entry say(int day, Saying saying) {
        var entry = new Entry(
                new UUID(1, entries.size()),
                Subject.instrument("TW-1"),
                entries.size() + 1L,
                Moment.of("7001", day == 35 ? day(35) : day(day).plusSeconds(3600)),
                "0".repeat(64),
                saying);
        entries.add(entry);
        return entry;
    }

    private static Found reading(int day, String read, String lower, String upper) {
        return found(
                day,
                Optional.of(new Found.Value(
                        "N·m",
                        new BigDecimal(read),
                        Optional.of(new BigDecimal(lower)),
                        Optional.of(new BigDecimal(upper)),
                        false)),
                Nature.READING);
    }

    private static Found found(int day, Optional<Found.Value> value, Nature nature) {
        var entry = new Entry(
                new UUID(2, day),
                Subject.workOrder("WB-1"),
                1,
                Moment.of("7001", day(day)),
                "0".repeat(64),
                new InstrumentWithdrawn(WithdrawalCause.OTHER, "stands for any entry", Optional.empty()));
        return new Found(entry, 1, "fitting", "FIT/a", Optional.of("J-1"), Gravity.A, value, false, nature);
    }

    private static Instant day(int number) {
        return DAY_0.plusSeconds(86_400L * number);
    }

    private static List<CalibrationPoint> points(String low, String middle, String high, String w) {
        return List.of(point("40", low, w), point("120", middle, w), point("200", high, w));
    }

    private static CalibrationPoint point(String target, String error, String w) {
        return new CalibrationPoint(new BigDecimal(target), List.of(), new BigDecimal(error), new BigDecimal(w));
    }
}

package wainbook.line.forecast.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.past.Recorded;
import wainbook.line.forecast.state.AsOf;
import wainbook.line.forecast.state.Calendar;
import wainbook.line.forecast.state.Needs;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.line.forecast.state.ProcessToday;
import wainbook.line.forecast.state.SmallLine;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.order.OrderSaying.Stops;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.works.shift.Break;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** What a missing part does to a forecast: in a works from six to two, on a Monday at eight; Recorded begins at seven. */
class PartsAwaitedTest {

    private static final LocalDate MONDAY = SmallLine.TODAY;
    private static final int DAY = 24 * 60;
    private static final List<DayOfWeek> WEEK =
            Arrays.stream(DayOfWeek.values()).limit(5).toList();
    private static final Shifts SHIFTS =
            new Shifts(List.of(Shift.everywhere("Day", 6 * 60, 14 * 60, WEEK)), ZoneId.of("UTC"));

    @Test
    void work_begins_with_that_of_the_day_the_part_is_expected_for() {
        assertThat(notBefore("fit", SmallLine.missing("fit", 2))).isEqualTo(2 * DAY - 120);
        assertThat(notBefore("strip", SmallLine.missing("fit", 2))).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void on_a_day_off_it_begins_on_the_next_working_day() {
        assertThat(notBefore("fit", SmallLine.missing("fit", 5))).isEqualTo(7 * DAY - 120);
    }

    /** Work has begun at six. */
    @Test
    void what_was_expected_by_now_counts_as_the_next_working_day() {
        assertThat(notBefore("fit", SmallLine.missing("fit", 0))).isEqualTo(DAY - 120);
        assertThat(notBefore("fit", SmallLine.missing("fit", -3))).isEqualTo(DAY - 120);
    }

    @Test
    void before_work_begins_today_is_a_day_to_come_and_after_it_or_in_a_break_it_is_not() {
        var pausing = new Shifts(SHIFTS.shifts(), List.of(new Break(9 * 60, 10 * 60)), Set.of(), SHIFTS.zone());

        assertThat(from(SHIFTS, "2026-03-02T05:00:00Z", MONDAY)).isEqualTo(60);
        assertThat(from(SHIFTS, "2026-03-02T05:00:00Z", MONDAY.minusDays(1))).isEqualTo(60);
        assertThat(from(pausing, "2026-03-02T09:30:00Z", MONDAY)).isEqualTo(DAY - 210);
        assertThat(from(SHIFTS, "2026-03-02T20:00:00Z", MONDAY)).isEqualTo(10 * 60);
        assertThat(from(new Shifts(List.of(), SHIFTS.zone()), "2026-03-02T20:00:00Z", MONDAY))
                .isEqualTo(4 * 60);
    }

    @Test
    void of_several_parts_the_latest_counts() {
        var bus = new Recorded("WB-1").onto(0, "strip");
        bus.missing(5, 1, "strip", MONDAY.plusDays(3)).missing(6, 2, "strip", MONDAY.plusDays(1));
        assertThat(needs(30, bus).latest("strip").orElseThrow().number()).isEqualTo(1);

        bus.missing(7, 1, "strip", MONDAY);
        assertThat(needs(30, bus).latest("strip").orElseThrow().number()).isEqualTo(2);
        assertThat(needs(30, bus.came(8, 1).came(9, 2)).parts()).isEmpty();
    }

    @Test
    void a_gate_that_only_waits_for_its_signature_does_not_wait_for_a_part() {
        OnHand vehicle = SmallLine.vehicle("1", Doing.UNSIGNED, "fit").needing(SmallLine.missing("fit", 2));

        assertThat(visit(vehicle, "fit")).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void a_vehicle_at_the_stage_finishes_after_the_part_has_come() {
        TheLineNow line =
                SmallLine.line(SmallLine.vehicle("1", Doing.WORK, "fit").needing(SmallLine.missing("fit", 2)));

        assertThat(LineForecast.of(line).vehicles().get(0).outlook().finish().sorted()[0])
                .isGreaterThanOrEqualTo(2 * DAY - 120);
    }

    @Test
    void minutes_in_which_it_stood_waiting_for_a_part_are_no_work() {
        var bus = new Recorded("WB-1")
                .onto(0, "strip")
                .missing(20, 1, "strip", MONDAY)
                .came(80, 1);

        assertThat(work(bus.done(100, "strip").signed(110, "strip"))).isEqualTo(40);
    }

    /** Whoever worked at the vehicle while the part was missing did not wait for it. */
    @Test
    void the_wait_begins_with_the_last_result_before_the_part_came() {
        var bus = new Recorded("WB-1").missing(-500, 1, "strip", MONDAY).onto(0, "strip");
        bus.done(30, "strip").done(50, "strip").came(90, 1).done(100, "strip").signed(110, "strip");

        assertThat(work(bus)).isEqualTo(60);
    }

    @Test
    void a_part_for_another_stage_and_one_that_never_came_take_nothing_off() {
        var bus = new Recorded("WB-1").onto(0, "strip");
        bus.missing(10, 1, "fit", MONDAY).missing(10, 2, "strip", MONDAY);

        assertThat(work(bus.done(100, "strip").signed(110, "strip"))).isEqualTo(100);
    }

    @Test
    void minutes_that_a_hold_and_a_missing_part_share_are_taken_off_once() {
        var bus = new Recorded("WB-1").onto(0, "strip").missing(20, 1, "strip", MONDAY);
        bus.held(40, Stops.WORK).came(60, 1).released(80);

        assertThat(work(bus.done(100, "strip").signed(110, "strip"))).isEqualTo(40);
    }

    @Test
    void the_work_so_far_of_a_vehicle_that_waits_for_a_part_stands_still() {
        var bus = new Recorded("WB-1").onto(0, "strip").missing(20, 1, "strip", MONDAY);
        bus.done(25, "strip").missing(30, 1, "strip", MONDAY.plusDays(1));

        assertThat(now(200, bus).vehicle("WB-1").orElseThrow().minutes()).isEqualTo(25);
    }

    /** Missing since Tuesday at eight. */
    @Test
    void a_morning_does_not_know_of_a_part_that_was_missed_after_it() {
        Recorded plain = new Recorded("WB-1").onto(0, "strip").done(30, "strip");
        Recorded missing = new Recorded("WB-1").onto(0, "strip").done(30, "strip");
        missing.missing(DAY + 60, 1, "fit", MONDAY.plusDays(10));

        assertThat(said(missing, 1)).isEqualTo(said(plain, 1));
        assertThat(median(said(missing, 2))).isAfter(median(said(plain, 2)));
    }

    private static List<Prediction> said(Recorded bus, int days) {
        return new BackTest(SHIFTS, new OneSheet(), Optional.empty(), List.of(bus.history()))
                .on(MONDAY.plusDays(days), BackTest.nothingKnown());
    }

    private static Instant median(List<Prediction> said) {
        List<Instant> finish = said.get(0).finish();
        return finish.get(finish.size() / 2);
    }

    private static double notBefore(String stage, Needs needs) {
        return visit(SmallLine.vehicle("1", Doing.ACCEPTED, null).needing(needs), stage);
    }

    private static double visit(OnHand vehicle, String stage) {
        var line = SmallLine.line(vehicle).line();
        return line.vehicles().get(0).visits().get(line.stage(stage)).notBeforeMinute();
    }

    private static double from(Shifts shifts, String now, LocalDate expected) {
        return new Calendar(shifts, Instant.parse(now)).workFrom(expected, List.of("ST-1"));
    }

    private static double work(Recorded bus) {
        return bus.past().visits().get(0).workMinutes();
    }

    private static Needs needs(int minute, Recorded bus) {
        return now(minute, bus).vehicle("WB-1").orElseThrow().needs();
    }

    private static TheLineNow now(int minute, Recorded bus) {
        return new AsOf(
                        Recorded.BEGIN.plusSeconds(60L * minute),
                        new Shifts(List.of(), SHIFTS.zone()),
                        new OneSheet(),
                        List.of())
                .line(List.of(bus.history()), record -> bus.past());
    }

    private record OneSheet() implements ProcessToday {

        @Override
        public CheckSheet sheet(String code, int revision) {
            return new CheckSheet(code, "Sheet", List.of(item("item"), item("other")), "strip");
        }

        private static CheckItem item(String key) {
            return new CheckItem(
                    key,
                    "Do it",
                    new Ask.Confirm(Optional.empty()),
                    Condition.NONE,
                    Optional.empty(),
                    Optional.empty(),
                    100,
                    Optional.empty(),
                    List.of(),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    1,
                    Optional.empty());
        }

        @Override
        public Optional<CheckSheet> inForce(String route, String stage) {
            return Optional.of(sheet("SHEET", 1));
        }

        @Override
        public List<TheLineNow.Post> posts(Collection<String> besides) {
            return List.of(
                    new TheLineNow.Post("strip", "Strip", List.of("ST-1")),
                    new TheLineNow.Post("fit", "Fit", List.of("ST-2")));
        }
    }
}

package wainbook.line.forecast.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.line.forecast.past.Cures;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.PastVisit;
import wainbook.line.forecast.past.Recorded;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** What cures by the clock, in a works that works from six to half past three; {@link Recorded#BEGIN} is a Monday at seven. */
class CuresTest {

    private static final Shifts SHIFTS = new Shifts(
            List.of(Shift.everywhere(
                    "Day",
                    6 * 60,
                    15 * 60 + 30,
                    Arrays.stream(DayOfWeek.values()).limit(5).toList())),
            ZoneId.of("UTC"));
    private static final int TWELVE_HOURS = 720;
    private static final int AT_THREE = 8 * 60;
    private static final int NEXT_SIX = 23 * 60;

    @Test
    void of_cures_side_by_side_the_longest_counts_and_of_those_after_each_other_the_sum() {
        assertThat(ahead(item("work", 30), cure("a", 120), cure("b", 90))).isEqualTo(120);
        assertThat(ahead(item("work", 30), cure("a", 120), cure("b", 90, "a"))).isEqualTo(210);
        assertThat(ahead(cure("a", 120), item("between", 10, "a"), cure("b", 90, "between")))
                .isEqualTo(210);
        assertThat(ahead(cure("a", 120), cure("b", 90, "a"), cure("c", 240))).isEqualTo(240);
    }

    @Test
    void a_wait_of_less_than_an_hour_is_work() {
        assertThat(ahead(cure("short", 59))).isZero();
        assertThat(ahead(cure("long", 60))).isEqualTo(60);
    }

    /** Planned minutes of a wait are hands on it; only where they hold the wait too it is taken out of them. */
    @Test
    void planned_minutes_are_less_the_cure_where_they_hold_it() {
        assertThat(Cures.workMinutes(sheet(item("work", 90), planned(cure("a", 120), 5))))
                .isEqualTo(95);
        assertThat(Cures.workMinutes(sheet(item("work", 90), planned(cure("a", 120), 130))))
                .isEqualTo(100);
        assertThat(Cures.workMinutes(sheet(planned(cure("a", 120), 120)))).isEqualTo(1);
    }

    @Test
    void twelve_hours_begun_at_three_cost_the_gate_no_more_than_the_night() {
        assertThat(gate(at(14), TWELVE_HOURS)).isCloseTo(16 * 60, within(1e-6));
        assertThat(gate(at(14), 0)).isCloseTo(60, within(1e-6));
    }

    @Test
    void the_same_begun_at_seven_cost_the_day() {
        assertThat(gate(at(6), TWELVE_HOURS)).isCloseTo(24 * 60, within(1e-6));
        assertThat(gate(at(6), 0)).isCloseTo(60, within(1e-6));
    }

    /** From seven to half past three, less the last half hour, and ten minutes in the morning. */
    @Test
    void of_a_stay_with_a_cure_over_night_what_cured_is_no_work() {
        PastVisit visit = cured().past(SHIFTS).visits().get(0);

        assertThat(visit.workMinutes()).isEqualTo(8 * 60 + 10);
        assertThat(visit.signatureMinutes()).isEqualTo(10);
    }

    @Test
    void of_a_cure_that_was_voided_what_had_cured_by_then_is_no_work() {
        var bus = new Recorded("WB-1").onto(0, "strip").done(60, "strip").cures(60, "strip", "cure", TWELVE_HOURS);
        bus.voided(180, "cure").done(240, "strip").signed(250, "strip");

        assertThat(bus.past(SHIFTS).visits().get(0).workMinutes()).isEqualTo(120);
    }

    @Test
    void a_cure_taken_from_paper_is_known_by_its_end_alone() {
        var bus = new Recorded("WB-1").onto(0, "strip").done(60, "strip");
        bus.cured(200, "strip", "cure", 60, 120).signed(210, "strip");

        assertThat(bus.past(SHIFTS).visits().get(0).workMinutes()).isEqualTo(80);
    }

    @Test
    void while_it_cures_the_gate_is_not_before_its_end_and_the_work_so_far_is_less_it() {
        var bus =
                new Recorded("WB-1").onto(0, "strip").done(60, "strip").cures(AT_THREE, "strip", "cure", TWELVE_HOURS);
        TheLineNow line = now(AT_THREE + 20, bus);
        OnHand vehicle = line.vehicle("WB-1").orElseThrow();

        assertThat(vehicle.doing()).isEqualTo(Doing.WORK);
        assertThat(vehicle.minutes()).isEqualTo(AT_THREE);
        assertThat(vehicle.needs().cures().get("strip"))
                .isEqualTo(new Cures(0, Optional.of(moment(AT_THREE + TWELVE_HOURS))));
        assertThat(line.line().vehicles().get(0).visits().get(0).curedMinute()).isEqualTo(TWELVE_HOURS - 20);
        assertThat(Forecast.of(line.line(), Effort.exactly(1, 100))
                        .vehicles()
                        .get(0)
                        .stages()
                        .get(0)
                        .outOf()
                        .tenth())
                .isGreaterThanOrEqualTo(NEXT_SIX - AT_THREE - 20);
    }

    @Test
    void what_is_to_cure_after_what_cures_now_is_laid_behind_it() {
        CheckSheet sheet = sheet(item("item", 100), cure("cure", TWELVE_HOURS), cure("second", 120, "cure"));
        var bus = new Recorded("WB-1").onto(0, "strip").done(60, "strip").cures(100, "strip", "cure", TWELVE_HOURS);

        assertThat(now(110, sheet, bus)
                        .vehicle("WB-1")
                        .orElseThrow()
                        .needs()
                        .cures()
                        .get("strip"))
                .isEqualTo(new Cures(120, Optional.of(moment(100 + TWELVE_HOURS + 120))));
    }

    @Test
    void what_has_cured_is_not_waited_for_again() {
        var bus = new Recorded("WB-1").onto(0, "strip").cures(0, "strip", "cure", TWELVE_HOURS);
        bus.cured(NEXT_SIX, "strip", "cure", 0, TWELVE_HOURS);

        OnHand vehicle = now(NEXT_SIX + 5, bus).vehicle("WB-1").orElseThrow();
        assertThat(vehicle.needs().cures()).containsOnlyKeys("fit");
        assertThat(vehicle.minutes()).isEqualTo(5);
    }

    private static Recorded cured() {
        return new Recorded("WB-1")
                .onto(0, "strip")
                .done(AT_THREE, "strip")
                .cures(AT_THREE, "strip", "cure", TWELVE_HOURS)
                .cured(NEXT_SIX + 10, "strip", "cure", AT_THREE, TWELVE_HOURS)
                .signed(NEXT_SIX + 20, "strip");
    }

    private static int ahead(CheckItem... items) {
        return Cures.of(sheet(items), Map.of()).aheadMinutes();
    }

    private static Instant at(int hour) {
        return LocalDate.of(2026, 3, 2).atTime(hour, 0).atZone(SHIFTS.zone()).toInstant();
    }

    private static Instant moment(int minute) {
        return Recorded.BEGIN.plus(Duration.ofMinutes(minute));
    }

    /** Minutes from now to the gate of a vehicle that has an hour's work before it, as all that came before it had. */
    private static double gate(Instant now, int curing) {
        OnHand vehicle = new OnHand(
                        "V",
                        "BUS",
                        Doing.WORK,
                        Optional.of("strip"),
                        Optional.of("ST-1"),
                        now,
                        0,
                        Map.of("strip", 60),
                        List.of(),
                        LocalDate.of(2026, 4, 1))
                .needing(new Needs(List.of(), Map.of("strip", new Cures(curing, Optional.empty()))));
        return left(new TheLineNow(
                new Calendar(SHIFTS, now),
                new PastTimes(IntStream.range(0, 20)
                        .mapToObj(bus -> new VehiclePast(
                                List.of(new PastVisit(
                                        "WB-" + bus, "BUS", "strip", 60, 60, 0, false, OptionalDouble.empty())),
                                Map.of()))
                        .toList()),
                MoveTimes.ANY,
                EntryRule.of(List.of()),
                List.of(new TheLineNow.Post("strip", "Strip", List.of("ST-1"))),
                List.of(vehicle),
                After.NOTHING));
    }

    private static double left(TheLineNow line) {
        return Forecast.of(line.line(), Effort.exactly(1, 1))
                .vehicles()
                .get(0)
                .finish()
                .median();
    }

    private static TheLineNow now(int minute, Recorded... buses) {
        return now(minute, sheet(item("item", 100), cure("cure", TWELVE_HOURS)), buses);
    }

    private static TheLineNow now(int minute, CheckSheet sheet, Recorded... buses) {
        return new AsOf(moment(minute), SHIFTS, new Sheets(sheet), List.of())
                .line(
                        Arrays.stream(buses).map(Recorded::history).toList(),
                        record -> VehiclePast.of(record, WorkingMinutes.of(SHIFTS), binding -> 100));
    }

    private record Sheets(CheckSheet sheet) implements ProcessToday {

        @Override
        public CheckSheet sheet(String code, int revision) {
            return sheet;
        }

        @Override
        public Optional<CheckSheet> inForce(String route, String stage) {
            return Optional.of(sheet);
        }

        @Override
        public List<TheLineNow.Post> posts(Collection<String> besides) {
            return List.of(
                    new TheLineNow.Post("strip", "Strip", List.of("ST-1")),
                    new TheLineNow.Post("fit", "Fit", List.of("ST-2")));
        }
    }

    private static CheckSheet sheet(CheckItem... items) {
        return new CheckSheet("SHEET", "Sheet", List.of(items), "strip");
    }

    private static CheckItem item(String key, int planned, String... after) {
        return item(key, new Ask.Confirm(Optional.empty()), planned, after);
    }

    private static CheckItem cure(String key, int minutes, String... after) {
        return item(key, new Ask.Wait(minutes), 0, after);
    }

    private static CheckItem planned(CheckItem item, int minutes) {
        return item(item.key(), item.asks(), minutes, item.after().toArray(String[]::new));
    }

    private static CheckItem item(String key, Ask asks, int planned, String... after) {
        return new CheckItem(
                key,
                "Do " + key,
                asks,
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                planned,
                Optional.empty(),
                List.of(),
                new ArrayList<>(List.of(after)),
                List.of(),
                Optional.empty(),
                1,
                Optional.empty());
    }
}

package wainbook.line.forecast.kept;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wainbook.ledger.History;
import wainbook.line.forecast.past.Recorded;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.line.forecast.score.Card;
import wainbook.line.forecast.score.Cards;
import wainbook.line.forecast.state.ProcessToday;
import wainbook.line.forecast.state.SetOrder;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/**
 * Past mornings forecast from what was recorded by then, in an invented works of two stations whose line moves at seven, nine, eleven
 * and one on working days: 72 buses, work of 70 to 100 minutes by a fixed seed.
 */
class BackTestTest {

    private static final int BUSES = 72;
    private static final int ORDERED_BEFORE = 14;
    private static final Shifts SHIFTS = new Shifts(
            List.of(Shift.everywhere(
                    "Day",
                    6 * 60 + 45,
                    15 * 60,
                    Arrays.stream(DayOfWeek.values()).limit(5).toList())),
            ZoneId.of("UTC"));
    private static final ProcessToday PROCESS = new OneSheet();

    private static final List<History> RECORDS = new ArrayList<>();
    private static final List<Prediction> SAID = new ArrayList<>();
    private static final Map<String, Instant> FINISHED = new HashMap<>();

    private record OneSheet() implements ProcessToday {

        @Override
        public CheckSheet sheet(String code, int revision) {
            var item = new CheckItem(
                    "item",
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
            return new CheckSheet(code, "Sheet", List.of(item), "strip");
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

    @BeforeAll
    static void the_works_has_built_its_buses_and_every_morning_is_forecast() {
        var chance = new Random(20_260_302);
        for (int bus = 0; bus < BUSES; bus++) {
            RECORDS.add(built(bus, chance));
        }
        RECORDS.forEach(record -> Outcomes.finished(record)
                .ifPresent(at -> FINISHED.put(record.subject().code(), at)));
        var test = new BackTest(SHIFTS, PROCESS, Optional.of(120), RECORDS);
        Map<String, VehiclePast> known = BackTest.nothingKnown();
        test.days(day(minute(BUSES))).forEach(day -> SAID.addAll(test.on(day, known)));
    }

    @Test
    void the_spans_hold_what_they_say_and_beat_both_plain_rules() {
        Instant after = Recorded.BEGIN.plus(Duration.ofDays(90));
        Cards cards = Cards.of(SAID, FINISHED, SHIFTS, day -> Outcomes.worked(SHIFTS, day), after);

        assertThat(cards.cards())
                .filteredOn(card -> card.counted() >= Card.ENOUGH)
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(cards.cards())
                .filteredOn(card -> card.counted() >= Card.ENOUGH)
                .allSatisfy(card -> {
                    assertThat(Card.off(card.within80().orElseThrow(), 0.8))
                            .as("80 %% at %s days: %s", card.days(), card.within80())
                            .isFalse();
                    assertThat(Card.off(card.within95().orElseThrow(), 0.95))
                            .as("95 %% at %s days: %s", card.days(), card.within95())
                            .isFalse();
                    assertThat(card.loss().orElseThrow().beatsAll())
                            .as("%s", card.loss())
                            .isTrue();
                });
    }

    @Test
    void a_morning_knows_nothing_of_what_was_recorded_after_it() {
        LocalDate day = day(minute(40));
        Instant at = day.atTime(BackTest.MORNING).atZone(SHIFTS.zone()).toInstant();
        List<History> then = RECORDS.stream().map(record -> record.upTo(at)).toList();

        assertThat(new BackTest(SHIFTS, PROCESS, Optional.of(120), then).on(day, BackTest.nothingKnown()))
                .isEqualTo(new BackTest(SHIFTS, PROCESS, Optional.of(120), RECORDS).on(day, BackTest.nothingKnown()))
                .isNotEmpty();
    }

    @Test
    void an_order_of_entry_that_was_set_is_heeded_from_its_time_on_alone() {
        LocalDate day = day(minute(40));
        Instant at = day.atTime(BackTest.MORNING).atZone(SHIFTS.zone()).toInstant();
        List<String> byRule = inLine(day, List.of());
        String last = byRule.get(byRule.size() - 1);
        String beforeIt = byRule.get(byRule.size() - 2);

        List<String> set = inLine(day, List.of(new SetOrder(List.of(last), 1, "7008", at.minusSeconds(1))));

        assertThat(set.indexOf(last)).isLessThan(set.indexOf(beforeIt));
        assertThat(inLine(day, List.of(new SetOrder(List.of(last), 1, "7008", at.plusSeconds(1)))))
                .isEqualTo(byRule);
    }

    private static List<String> inLine(LocalDate day, List<SetOrder> set) {
        return new BackTest(SHIFTS, PROCESS, Optional.of(120), RECORDS, set)
                .on(day, BackTest.nothingKnown()).stream()
                        .map(Prediction::order)
                        .toList();
    }

    @Test
    void weekends_are_no_mornings_and_nobody_who_is_finished_is_forecast() {
        assertThat(SAID).noneMatch(one -> one.at().atZone(SHIFTS.zone()).getDayOfWeek() == DayOfWeek.SUNDAY);
        assertThat(SAID)
                .noneMatch(one -> Optional.ofNullable(FINISHED.get(one.order()))
                        .filter(at -> at.isBefore(one.at()))
                        .isPresent());
    }

    private static History built(int bus, Random chance) {
        String number = String.format("WB-%03d", bus);
        LocalDate promised = day(minute(bus + 1)).plusDays(1 + chance.nextInt(3));
        var record = new Recorded(number, minute(bus - ORDERED_BEFORE) + 10, promised);
        int came = minute(bus);
        record.onto(came, "strip");
        work(record, came, "strip", chance);
        int next = minute(bus + 1);
        record.at(next, "fit");
        work(record, next, "fit", chance);
        record.out(next + 119);
        return record.history();
    }

    private static void work(Recorded record, int from, String stage, Random chance) {
        int done = from + 70 + chance.nextInt(31);
        record.done(done, stage).signedTruly(done + 4 + chance.nextInt(8), stage, PROCESS::sheet);
    }

    /** Four slots a day from seven on; the beginning is a Monday. */
    private static int minute(int slot) {
        int day = Math.floorDiv(slot, 4);
        int week = Math.floorDiv(day, 5);
        return (7 * week + Math.floorMod(day, 5)) * 24 * 60 + Math.floorMod(slot, 4) * 120;
    }

    private static LocalDate day(int minute) {
        return LocalDate.ofInstant(Recorded.BEGIN.plus(Duration.ofMinutes(minute)), SHIFTS.zone());
    }
}

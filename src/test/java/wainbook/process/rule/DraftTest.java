package wainbook.process.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.process.Sheets.asking;
import static wainbook.process.Sheets.decimal;
import static wainbook.process.Sheets.item;
import static wainbook.process.Sheets.known;
import static wainbook.process.Sheets.sheet;
import static wainbook.process.Sheets.when;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying;
import wainbook.process.Sheets;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;

class DraftTest {

    private static List<String> faults(CheckItem... items) {
        return new Draft(sheet(items))
                .check(known()).stream().map(DraftTest::shown).toList();
    }

    private static String shown(Reason reason) {
        return reason.key().substring("process.".length()) + " " + String.join(" | ", reason.arguments());
    }

    @Test
    void releases_a_sound_sheet_as_the_next_revision() {
        var draft = new Draft(sheet(item("a"), item("b", "a"), when("c", "tail_lift && axles == 2")));

        var first = draft.release(known(), Optional.empty()).fold(done -> done, reasons -> null);
        assertThat(first).isEqualTo(new ProcessSaying.Released(draft.sheet(), 1));
        assertThat(draft.release(known(), Optional.of(first))
                        .fold(done -> done.revision(), reasons -> 0)
                        .intValue())
                .isEqualTo(2);
    }

    @Test
    void refuses_a_faulty_sheet_with_every_fault() {
        var draft = new Draft(sheet(item("a"), item("a"), item("b", "z"), asking("c", new Ask.Tighten("NONE"))));

        assertThat(draft.release(known(), Optional.empty()).reasons())
                .extracting(Reason::key)
                .containsExactly("process.duplicateItem", "process.unknownJoint", "process.unknownAfter");
    }

    @Test
    void refuses_an_unknown_stage() {
        var strayed = new CheckSheet("X", "Nowhere", List.of(item("a")), "paint");

        assertThat(new Draft(strayed).check(known()))
                .extracting(DraftTest::shown)
                .containsExactly("unknownStage X | paint");
    }

    @Test
    void refuses_items_that_wait_for_each_other() {
        assertThat(faults(item("a", "c"), item("b", "a"), item("c", "b"), item("d", "c"), item("e")))
                .containsExactly("circleInAfter a | a → b → c → a");
        assertThat(faults(item("x", "y"), item("y", "y"))).containsExactly("circleInAfter y | y → y");
    }

    @Test
    void says_where_a_condition_is_wrong() {
        assertThat(faults(when("a", "tail_lift || axels > 2")))
                .singleElement()
                .asString()
                .startsWith("conditionFault a | 1 | 14 | undeclared reference to 'axels'");
    }

    @Test
    void refuses_class_a_by_tick() {
        assertThat(faults(item("lug", new Ask.Confirm(Optional.of(Sheets.LUG.code())), Condition.DEAD, List.of())))
                .containsExactly("classAByTick lug | HV-LUG-M8");
        assertThat(faults(asking("bracket", new Ask.Confirm(Optional.of("BRK-M12")))))
                .containsExactly("classBByTick bracket | BRK-M12");
        assertThat(faults(asking("clip", new Ask.Confirm(Optional.of("CLIP-M6")))))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Condition.class)
    void lets_hands_on_a_high_voltage_joint_only_when_dead_or_without_a_source(Condition condition) {
        var lug = item("lug", new Ask.Tighten(Sheets.LUG.code()), condition, List.of());

        boolean safe = condition == Condition.DEAD || condition == Condition.NO_SOURCE_ABOARD;
        assertThat(faults(lug).contains("highVoltageCondition lug | HV-LUG-M8")).isEqualTo(!safe);
    }

    @Test
    void refuses_an_electrical_joint_checked_by_its_mark_alone() {
        var check = item(
                "check",
                new Ask.Recheck(Sheets.LUG.code(), Optional.empty(), Optional.empty()),
                Condition.DEAD,
                List.of());
        assertThat(faults(check)).containsExactly("contactNotMeasured check | HV-LUG-M8");
        assertThat(faults(check, contact("mΩ", List.of()))).hasSize(1);
        assertThat(faults(check, contact("V", List.of("check")))).hasSize(1);
        assertThat(faults(check, contact("mΩ", List.of("check")))).isEmpty();
        assertThat(faults(asking("bracket", new Ask.Recheck("BRK-M12", Optional.empty(), Optional.empty()))))
                .isEmpty();
    }

    private static CheckItem contact(String unit, List<String> after) {
        var measure = new Ask.Measure(
                "contact resistance",
                unit,
                Optional.of(Limits.atMost(decimal("0.5"))),
                Optional.empty(),
                Optional.of("insulation-tester"),
                Optional.empty());
        return item("contact", measure, Condition.DEAD, after);
    }

    @Test
    void a_table_is_read_with_an_instrument_of_a_known_kind() {
        var column = new Ask.Table.Column("resistance", "Ω", Optional.empty(), Optional.empty());
        assertThat(faults(asking(
                        "bond", new Ask.Table(List.of(column), List.of("frame"), Optional.of("bonding-ohmmeter")))))
                .containsExactly("unknownInstrumentKind bond | bonding-ohmmeter");
        assertThat(faults(asking(
                        "bond", new Ask.Table(List.of(column), List.of("frame"), Optional.of("insulation-tester")))))
                .isEmpty();
    }

    @Test
    void refuses_a_count_again_of_what_was_not_counted_before_it() {
        Ask recount = new Ask.Recount("tools-in", "pieces");
        CheckItem first = Sheets.asking("tools-in", Ask.Quantity.of("pieces", Optional.empty()));
        assertThat(faults(first, Sheets.asking("tools-out", recount)))
                .containsExactly("recountNotAfter tools-out | tools-in");
        assertThat(faults(first, Sheets.item("tools-out", recount, Condition.NONE, List.of("tools-in"))))
                .isEmpty();
    }

    @Test
    void refuses_live_work_without_a_competence() {
        assertThat(faults(item("live", new Ask.Photograph(), Condition.LIVE, List.of())))
                .containsExactly("liveCompetenceMissing live");
    }

    @Test
    void refuses_limits_that_no_reading_could_meet() {
        var crossed = Limits.between(decimal("28.8"), decimal("27"));

        assertThat(faults(asking(
                        "volt",
                        new Ask.Measure(
                                "voltage",
                                "V",
                                Optional.of(crossed),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()))))
                .containsExactly("limitsCrossed volt | voltage | 28.8 – 27");
    }

    @Test
    void refuses_a_works_limit_laxer_than_the_legal_one() {
        var legal = Limits.atLeast(decimal("0.35"));

        assertThat(faults(asking("iso", Sheets.measure(same -> Limits.atLeast(decimal("0.3")), legal))))
                .containsExactly("worksLimitLaxer iso | insulation resistance | 0.3 – … | 0.35 – …");
        assertThat(faults(asking("iso", Sheets.measure(same -> Limits.atLeast(decimal("1")), legal))))
                .isEmpty();
        assertThat(faults(asking("iso", Sheets.measure(same -> same, legal)))).isEmpty();
    }

    @Test
    void refuses_an_instrument_kind_and_a_pattern_that_cannot_be() {
        var measure = new Ask.Measure(
                "mass", "kg", Optional.empty(), Optional.empty(), Optional.of("scales"), Optional.empty());

        assertThat(faults(asking("mass", measure))).containsExactly("unknownInstrumentKind mass | scales");
        assertThat(faults(asking("pack", new Ask.Serial("PACK", Optional.of("(?=P)")))))
                .singleElement()
                .asString()
                .startsWith("patternFault pack | (?=P)");
    }
}

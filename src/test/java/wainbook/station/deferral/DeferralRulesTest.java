package wainbook.station.deferral;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.deferral.Deferral.ToCarryOver;
import wainbook.station.deferral.Deferral.ToReSequence;
import wainbook.station.work.Guards;
import wainbook.station.work.Work;
import wainbook.works.Person;
import wainbook.works.Role;

class DeferralRulesTest {

    private static final Instant NOW = Instant.parse("2026-03-02T06:00:00Z");
    private static final Person OWNER = new Person("W-2", List.of(Role.TECHNICIAN), false, Map.of());
    private static final About ABOUT = new About("strip", "STRIP", 1, "item", List.of());

    @Test
    void an_item_not_begun_is_re_sequenced_with_a_bar_to_a_stage_still_to_come() {
        var rules = rules(Condition.NONE, Optional.empty());
        assertThat(rules.againstReSequencing()).isEmpty();
        assertThat(rules.faults(reSequence("fitting", List.of(Bar.DRIVING), "part missing")))
                .isEmpty();
        assertThat(keys(rules.faults(reSequence("strip", List.of(), " "))))
                .containsExactly("station.notALaterStage", "station.reasonMissing", "station.barMissing");
        assertThat(rules.faults(reSequence("strip", List.of(), " ")))
                .extracting(reason -> reason.lift().orElse(""))
                .containsExactly("#toStage", "#reason", "#bars");
    }

    @Test
    void an_item_begun_is_not_re_sequenced_but_may_be_carried_over() {
        for (Saying begun : List.of(confirmed(), waitBegun())) {
            var rules = rules(Condition.NONE, Optional.empty(), begun);
            assertThat(keys(rules.againstReSequencing())).contains("station.begunAlready");
        }
        var waiting = rules(Condition.NONE, Optional.empty(), waitBegun());
        assertThat(waiting.againstCarryingOver()).isEmpty();
        assertThat(waiting.faults(carryOver("fitting", "valve missing"), OWNER)).isEmpty();
    }

    @Test
    void joint_class_a_and_high_voltage_work_is_not_carried_over() {
        String text =
                "Item item cannot be carried over. It is joint class A or high-voltage work. Finish it or undo it "
                        + "before the vehicle leaves; what was not begun a works engineer can re-sequence.";
        for (DeferralRules rules : List.of(
                rules(Condition.NONE, Optional.of(joint(JointClass.A, false)), waitBegun()),
                rules(Condition.NONE, Optional.of(joint(JointClass.B, true)), waitBegun()),
                rules(Condition.NO_SOURCE_ABOARD, Optional.empty(), waitBegun()),
                rules(Condition.DEAD, Optional.empty()),
                rules(Condition.TEST_UNDER_ISOLATION, Optional.empty()),
                rules(Condition.LIVE, Optional.empty()))) {
            assertThat(rules.againstCarryingOver())
                    .extracting(
                            reason -> Words.of(reason.key(), reason.arguments().toArray()))
                    .containsExactly(text);
        }
        assertThat(rules(Condition.NONE, Optional.of(joint(JointClass.B, false)))
                        .againstCarryingOver())
                .isEmpty();
    }

    @Test
    void an_item_with_an_electrical_condition_or_a_high_voltage_joint_bars_energising() {
        for (DeferralRules rules : List.of(
                rules(Condition.NO_SOURCE_ABOARD, Optional.empty()),
                rules(Condition.DEAD, Optional.empty()),
                rules(Condition.TEST_UNDER_ISOLATION, Optional.empty()),
                rules(Condition.LIVE, Optional.empty()),
                rules(Condition.NONE, Optional.of(joint(JointClass.B, true))))) {
            assertThat(rules.highVoltage()).isTrue();
            assertThat(rules.faults(reSequence("fitting", List.of(Bar.DRIVING), "part missing")))
                    .extracting(
                            reason -> Words.of(reason.key(), reason.arguments().toArray()))
                    .containsExactly("Item item needs the bar on energising. "
                            + "It belongs to the high-voltage system. Set that bar.");
            assertThat(rules.faults(reSequence("fitting", List.of(Bar.ENERGISING), "part missing")))
                    .isEmpty();
        }
        assertThat(rules(Condition.NONE, Optional.of(joint(JointClass.A, false)))
                        .highVoltage())
                .isFalse();
    }

    @Test
    void an_item_is_carried_over_once_to_somebody_who_works_here() {
        var brought = new CarriedOver(ABOUT, "fitting", "W-2", "valve");
        var rules = rules("fitting", Condition.NONE, Optional.empty(), brought);
        assertThat(keys(rules.againstCarryingOver())).containsExactly("station.carriedOverOnce");
        var nobody = new Person("W-9", List.of(), false, Map.of());
        var left = new Person("W-2", List.of(Role.TECHNICIAN), true, Map.of());
        for (Person owner : List.of(nobody, left)) {
            assertThat(keys(rules(Condition.NONE, Optional.empty()).faults(carryOver("fitting", "valve"), owner)))
                    .containsExactly("station.ownerUnknown");
        }
    }

    @Test
    void what_is_settled_or_at_the_last_stage_is_given_to_no_later_one() {
        assertThat(keys(rules(Condition.NONE, Optional.empty(), confirmed()).againstCarryingOver()))
                .containsExactly("station.nothingToDefer");
        var sent = new ReSequenced(ABOUT, "fitting", List.of(Bar.DRIVING), "part missing");
        assertThat(keys(rules(Condition.NONE, Optional.empty(), sent).againstReSequencing()))
                .containsExactly("station.nothingToDefer");
        assertThat(keys(rules("fitting", Condition.NONE, Optional.empty(), sent).againstReSequencing()))
                .isEmpty();
        var last = new ReSequenced(ABOUT, "commissioning", List.of(Bar.DRIVING), "part missing");
        assertThat(keys(rules("commissioning", Condition.NONE, Optional.empty(), last)
                        .againstReSequencing()))
                .containsExactly("station.noLaterStage");
    }

    @Test
    void what_came_over_is_recorded_under_the_sheet_it_came_with_and_is_done_then() {
        var sent = new ReSequenced(ABOUT, "fitting", List.of(Bar.DRIVING), "part missing");
        About about =
                rules("fitting", Condition.NONE, Optional.empty(), sent).work().about();
        assertThat(about).isEqualTo(new About("fitting", "STRIP", 1, "item", List.of()));
        var done = new Confirmed(about, basis());
        assertThat(rules("fitting", Condition.NONE, Optional.empty(), sent, done)
                        .work()
                        .state()
                        .status())
                .isEqualTo(ItemState.Status.PASSED);
    }

    @Test
    void only_a_second_check_is_given_to_the_operator() {
        var rules = rules(Condition.NONE, Optional.empty());
        assertThat(keys(rules.againstHandingOn())).containsExactly("station.noSecondCheck");
        assertThat(rules.secondCheck()).isEmpty();
        assertThat(keys(rules.faults(new Deferral.ToHandOn(UUID.randomUUID(), "WB-1", "item", " "))))
                .containsExactly("station.reasonMissing");
    }

    private static DeferralRules rules(Condition condition, Optional<Joint> joint, Saying... said) {
        return rules("strip", condition, joint, said);
    }

    /** The rules for the item of sheet STRIP on a vehicle at a stage, after what was said. */
    private static DeferralRules rules(String stage, Condition condition, Optional<Joint> joint, Saying... said) {
        History history = history(stage, said);
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        StageRecord record = StageRecord.of(
                        history, order, stage, (code, revision) -> sheet(code, code.equals("STRIP"), condition))
                .orElseThrow();
        var guards = new Guards(
                order,
                record,
                record.item("item").orElseThrow(),
                OWNER,
                Optional.empty(),
                joint,
                List.of(),
                List.of(),
                NOW,
                LocalDate.of(2026, 3, 2));
        return new DeferralRules(new Work(
                history,
                stage,
                guards.state(),
                guards,
                Moment.of("W-1", NOW),
                fingerprint -> Optional.empty(),
                List.of()));
    }

    private static History history(String stage, Saying... said) {
        Subject subject = Subject.workOrder("WB-1");
        var entries = new ArrayList<Entry>();
        Saying ordered = new Ordered(
                "operator",
                "12 m bus",
                "bus-12m",
                "BUS-12M",
                List.of("strip", "fitting", "commissioning"),
                LocalDate.of(2027, 1, 1));
        Stream.concat(Stream.of(ordered, moved(stage)), Stream.of(said)).forEach(one -> {
            long number = entries.size() + 1L;
            entries.add(new Entry(new UUID(1, number), subject, number, Moment.of("W-1", NOW), "0".repeat(64), one));
        });
        return new History(subject, entries);
    }

    private static Moved moved(String stage) {
        return new Moved(
                Direction.ONTO_LINE,
                new Place(Optional.empty(), "YARD"),
                new Place(Optional.of(stage), "ST-1"),
                Optional.of(new Binding(stage, stage.toUpperCase(java.util.Locale.ROOT), 1)),
                List.of(),
                Optional.empty());
    }

    private static CheckSheet sheet(String code, boolean own, Condition condition) {
        return new CheckSheet(code, code, List.of(item(own ? "item" : "another", condition)), "strip");
    }

    private static CheckItem item(String key, Condition condition) {
        return new CheckItem(
                key,
                "Do it",
                new Ask.Confirm(Optional.empty()),
                condition,
                Optional.empty(),
                Optional.empty(),
                10,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                3,
                Optional.empty());
    }

    private static Joint joint(JointClass jointClass, boolean highVoltage) {
        return new Joint(
                "J-1",
                "Joint",
                jointClass,
                2,
                Joint.Order.LIST,
                new Joint.Torque(new BigDecimal("20"), new Joint.Window(new BigDecimal("18"), new BigDecimal("22"))),
                Optional.empty(),
                "torque-wrench",
                2,
                Optional.of("M8 8.8 dry"),
                highVoltage,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Confirmed confirmed() {
        return new Confirmed(ABOUT, basis());
    }

    private static WaitBegun waitBegun() {
        return new WaitBegun(ABOUT, basis(), 10);
    }

    private static Basis basis() {
        return new Basis(Condition.NONE, Optional.empty(), Optional.empty());
    }

    private static ToReSequence reSequence(String stage, List<Bar> bars, String reason) {
        return new ToReSequence(new UUID(0, 1), "WB-1", "item", stage, bars, reason);
    }

    private static ToCarryOver carryOver(String stage, String reason) {
        return new ToCarryOver(new UUID(0, 1), "WB-1", "item", stage, "W-2", reason);
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}

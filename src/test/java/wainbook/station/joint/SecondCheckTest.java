package wainbook.station.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Guard;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/**
 * 30 minutes standing, whether moved or not, or 40 to 80 km: haulage guidance after BS AU 50-2-7a, read on trade pages.
 */
class SecondCheckTest {

    private static final Instant START = Instant.parse("2026-03-02T06:00:00Z");
    private static final About ABOUT = new About("final", "FINAL", 1, "wheels", List.of());
    private static final Basis BASIS = new Basis(Condition.NONE, Optional.empty(), Optional.empty());

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void wheel_nuts_are_owed_a_check_once_they_were_tightened() {
        assertThat(owed()).isEmpty();
        say(0, tightened("WHEEL", Verdict.FAIL));
        assertThat(owed()).isEmpty();
        say(1, tightened("OTHER", Verdict.PASS));
        assertThat(owed()).isEmpty();
        say(2, tightened("WHEEL", Verdict.PASS));
        assertThat(owed().orElseThrow().from()).isEqualTo(at(32));
    }

    @Test
    void before_they_have_settled_a_check_does_not_count() {
        say(0, tightened("WHEEL", Verdict.PASS));
        assertThat(owed().orElseThrow().against(Moment.of("W-1", at(30).minusMillis(1))))
                .extracting(Reason::key)
                .containsExactly("station.secondCheckEarly");
        assertThat(owed().orElseThrow().against(Moment.of("W-1", at(30)))).isEmpty();
    }

    @Test
    void a_check_that_holds_settles_it_and_one_that_does_not_leaves_it_owed() {
        say(0, tightened("WHEEL", Verdict.PASS));
        say(40, rechecked(Verdict.FAIL));
        assertThat(owed()).isPresent();
        say(45, rechecked(Verdict.PASS));
        assertThat(owed()).isEmpty();
    }

    @Test
    void wheels_taken_off_and_tightened_again_are_owed_it_again() {
        say(0, tightened("WHEEL", Verdict.PASS));
        say(40, rechecked(Verdict.PASS));
        say(60, tightened("WHEEL", Verdict.PASS));
        assertThat(owed().orElseThrow().from()).isEqualTo(at(90));
    }

    @Test
    void a_tightening_made_void_owes_nothing() {
        Entry entry = say(0, tightened("WHEEL", Verdict.PASS));
        say(1, new Voided(entry.id(), "FINAL/wheels", "wrong side"));
        assertThat(owed()).isEmpty();
    }

    @Test
    void what_was_given_to_the_operator_is_owed_here_no_longer() {
        say(0, tightened("WHEEL", Verdict.PASS));
        say(40, new HandedOn(ABOUT, "WHEEL", 80, "Road test was 12 km"));
        assertThat(owed()).isEmpty();
    }

    @Test
    void a_re_check_that_names_no_time_is_an_item_like_any_other() {
        say(0, tightened("WHEEL", Verdict.PASS));
        assertThat(SecondCheck.owed(item(new Ask.Recheck("WHEEL", Optional.empty(), Optional.empty())), history()))
                .isEmpty();
    }

    private Optional<SecondCheck> owed() {
        return SecondCheck.owed(item(new Ask.Recheck("WHEEL", Optional.of(30), Optional.of(80))), history());
    }

    private static CheckItem item(Ask asks) {
        return new CheckItem(
                "wheels",
                "Check the wheel nuts again",
                asks,
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                3,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                1,
                Optional.empty());
    }

    private History history() {
        return new History(Subject.workOrder("WB-1"), entries);
    }

    private Entry say(int minute, Saying saying) {
        var entry = new Entry(
                new UUID(0, entries.size()),
                Subject.workOrder("WB-1"),
                entries.size() + 1L,
                Moment.of("W-1", at(minute)),
                "0".repeat(64),
                saying);
        entries.add(entry);
        return entry;
    }

    private static Instant at(int minute) {
        return START.plusSeconds(60L * minute);
    }

    private static Tightened tightened(String joint, Verdict verdict) {
        return new Tightened(
                ABOUT,
                BASIS,
                joint,
                JointClass.A,
                new Joint.Torque(new BigDecimal("600"), new Joint.Window(new BigDecimal("550"), new BigDecimal("650"))),
                Optional.empty(),
                Optional.empty(),
                List.of(new BigDecimal("600")),
                List.of(),
                List.of(),
                verdict);
    }

    private static Rechecked rechecked(Verdict verdict) {
        return new Rechecked(
                ABOUT,
                BASIS,
                "WHEEL",
                JointClass.A,
                CheckWay.FIRST_MOTION,
                new BigDecimal("600"),
                Optional.empty(),
                new Guard(BigDecimal.ONE, BigDecimal.ONE),
                Optional.empty(),
                List.of(new BigDecimal("600")),
                List.of(),
                List.of(),
                verdict);
    }
}

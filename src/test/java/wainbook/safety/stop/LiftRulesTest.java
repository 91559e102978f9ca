package wainbook.safety.stop;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.hold.Holding;
import wainbook.safety.SafetySaying.StopLifted;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.SafetySaying.WorkStopped;
import wainbook.safety.stop.Stopping.ToLift;
import wainbook.works.Person;
import wainbook.works.Role;

/** Who lets work go on, and what ends a stop. */
class LiftRulesTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");

    private History stream = History.empty(Subject.works());

    @ParameterizedTest
    @EnumSource(Role.class)
    void works_and_quality_engineers_lift_and_nobody_else(Role role) {
        say("1", place());
        boolean may = role == Role.WORKS_ENGINEER || role == Role.QUALITY_ENGINEER;
        assertThat(lift("5", role, "swept")).isEqualTo(may ? List.of() : List.of("safety.mayNotLift"));
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void nobody_lifts_their_own(Role role) {
        say("5", place());
        assertThat(lift("5", role, "swept")).contains("safety.ownStop");
    }

    @Test
    void one_without_a_name_is_anybodys_to_lift_who_may_lift_at_all() {
        say("nameless", place());
        assertThat(lift("5", Role.WORKS_ENGINEER, "swept")).isEmpty();
    }

    @Test
    void only_what_was_stopped_for_safety_takes_a_second_person() {
        for (HoldKind kind : HoldKind.values()) {
            assertThat(Holding.takesAnother(kind, "5", "5")).as(kind.name()).isEqualTo(kind == HoldKind.SAFETY);
            assertThat(Holding.takesAnother(kind, "5", "6")).as(kind.name()).isFalse();
        }
    }

    @Test
    void it_is_lifted_once_and_with_what_was_done() {
        say("1", place());
        assertThat(lift("5", Role.WORKS_ENGINEER, "")).containsExactly("safety.doneMissing");
        assertThat(lift("5", Role.WORKS_ENGINEER, "x".repeat(2001))).containsExactly("safety.doneMissing");
        say("5", new StopLifted(1, "swept"));
        assertThat(stop().open()).isFalse();
        assertThat(stop().done()).contains("swept");
        assertThat(lift("6", Role.WORKS_ENGINEER, "swept")).containsExactly("safety.liftedAlready");
        assertThat(keys(LiftRules.against(
                        Optional.empty(), new ToLift(UUID.randomUUID(), 3, "swept"), person("5", Role.WORKS_ENGINEER))))
                .containsExactly("safety.stopNotFound");
    }

    @Test
    void a_vehicles_stop_ends_with_its_own_hold_and_no_other() {
        stream = History.empty(Subject.workOrder("WB-1"));
        say("1", new WorkStopped(1, Optional.of(4), Optional.empty(), Optional.empty()));
        say("5", new HoldReleased(3, "parts came"));
        assertThat(stop().open()).isTrue();
        say("5", new HoldReleased(4, "swept"));
        assertThat(stop().open()).isFalse();
        assertThat(stop().done()).contains("swept");
    }

    @Test
    void a_place_has_its_own_stops_and_no_others() {
        say("1", place());
        say("1", new WorkStopped(2, Optional.empty(), Optional.of("ST-8"), Optional.empty()));
        say("1", new WorkStopped(3, Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(Stops.of(stream).at("ST-8")).extracting(Stop::number).containsExactly(2);
        say("5", new StopLifted(2, "swept"));
        assertThat(Stops.of(stream).at("ST-8")).isEmpty();
        assertThat(Stops.of(stream).open()).extracting(Stop::number).containsExactly(1, 3);
    }

    @Test
    void two_thousand_characters_of_what_was_done_are_enough_and_blanks_are_none() {
        say("1", place());
        assertThat(lift("5", Role.WORKS_ENGINEER, "x".repeat(2000))).isEmpty();
        assertThat(lift("5", Role.WORKS_ENGINEER, " ")).containsExactly("safety.doneMissing");
    }

    @Test
    void every_reason_against_lifting_is_said_and_who_may_is_named() {
        say("5", place());
        List<Reason> against = LiftRules.against(
                Optional.of(stop()), new ToLift(UUID.randomUUID(), 1, ""), person("5", Role.TECHNICIAN));
        assertThat(keys(against)).containsExactly("safety.mayNotLift", "safety.ownStop", "safety.doneMissing");
        String may = Role.QUALITY_ENGINEER.word() + ", " + Role.WORKS_ENGINEER.word();
        assertThat(against.get(0).arguments()).containsExactly("1", may);
        assertThat(against.get(2).lift()).contains("#done");
    }

    @Test
    void words_stay_with_their_stop_in_the_order_in_which_they_came() {
        say("1", place());
        say("1", new WorkStopped(2, Optional.empty(), Optional.of("ST-8"), Optional.empty()));
        say("1", new StopTold(1, "smoke"));
        say("2", new StopTold(1, "from the fan"));
        assertThat(stop().told())
                .extracting(entry -> ((StopTold) entry.saying()).words())
                .containsExactly("smoke", "from the fan");
        assertThat(Stops.of(stream).number(2).orElseThrow().told()).isEmpty();
        say("5", new StopLifted(1, "swept"));
        assertThat(stop().told()).hasSize(2);
        say("6", new StopLifted(1, "swept again"));
        assertThat(stop().done()).as("the first word stands").contains("swept");
    }

    @Test
    void stops_are_numbered_from_one_and_a_stop_says_what_it_stops() {
        assertThat(Stops.of(stream).next()).isEqualTo(1);
        say("nameless", place());
        assertThat(Stops.of(stream).next()).isEqualTo(2);
        assertThat(Stops.of(stream).number(0)).isEmpty();
        assertThat(Stops.of(stream).number(2)).isEmpty();
        assertThat(stop().number()).isEqualTo(1);
        assertThat(stop().order()).isEmpty();
        assertThat(stop().nameless()).isTrue();
        assertThat(stop().done()).isEmpty();
        assertThat(stop().path()).isEqualTo("/safety/stops/_works/1");
        stream = History.empty(Subject.workOrder("WB-1"));
        say("5", new HoldReleased(4, "of another matter"));
        say("1", new WorkStopped(1, Optional.of(4), Optional.empty(), Optional.empty()));
        assertThat(stop().open())
                .as("what was released before it lifts nothing")
                .isTrue();
        assertThat(stop().order()).contains("WB-1");
        assertThat(stop().nameless()).isFalse();
        assertThat(stop().path()).isEqualTo("/safety/stops/WB-1/1");
    }

    private static WorkStopped place() {
        return new WorkStopped(1, Optional.empty(), Optional.of("ST-7"), Optional.empty());
    }

    private Stop stop() {
        return Stops.of(stream).number(1).orElseThrow();
    }

    private List<String> lift(String who, Role role, String done) {
        return keys(LiftRules.against(Optional.of(stop()), new ToLift(UUID.randomUUID(), 1, done), person(who, role)));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static Person person(String number, Role role) {
        return new Person(number, List.of(role), false, Map.of());
    }

    private void say(String who, Saying saying) {
        stream = stream.and(new Entry(
                UUID.randomUUID(), stream.subject(), stream.number() + 1, Moment.of(who, NOW), "0".repeat(64), saying));
    }
}

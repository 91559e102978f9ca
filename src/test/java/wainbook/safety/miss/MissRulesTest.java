package wainbook.safety.miss;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import wainbook.safety.SafetySaying.NearMissClosed;
import wainbook.safety.SafetySaying.NearMissLookedAt;
import wainbook.safety.SafetySaying.NearMissReported;
import wainbook.safety.SafetySaying.NearMissTold;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.miss.Handling.ToClose;
import wainbook.safety.miss.Handling.ToLookAt;
import wainbook.safety.miss.Reporting.ToTell;
import wainbook.works.Person;
import wainbook.works.Role;

/** Who looks at a near miss and closes it, and how it stands after each entry. */
class MissRulesTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final Set<Role> LOOK =
            Set.of(Role.TEAM_LEADER, Role.LINE_MANAGER, Role.WORKS_ENGINEER, Role.QUALITY_ENGINEER);

    private History works = History.empty(Subject.works());

    @ParameterizedTest
    @EnumSource(Role.class)
    void those_who_answer_for_the_work_look_and_close_and_nobody_else(Role role) {
        say("1", reported(1));
        boolean may = LOOK.contains(role);
        assertThat(look("9", TODAY, person("5", role))).isEqualTo(may ? List.of() : List.of("safety.mayNotLookAt"));
        assertThat(close("a guard was put on", person("5", role)))
                .isEqualTo(may ? List.of() : List.of("safety.mayNotClose"));
    }

    @Test
    void whoever_was_named_closes_their_own_whatever_their_role() {
        say("1", reported(1));
        say("5", new NearMissLookedAt(1, "9", TODAY));
        assertThat(close("a guard was put on", person("9", Role.TECHNICIAN))).isEmpty();
        assertThat(close("a guard was put on", person("8", Role.TECHNICIAN))).containsExactly("safety.mayNotClose");
    }

    @Test
    void it_is_given_to_somebody_who_is_here_for_a_day_that_is_to_come() {
        say("1", reported(1));
        Person leader = person("5", Role.TEAM_LEADER);
        assertThat(look("9", TODAY, leader)).isEmpty();
        assertThat(look("9", TODAY.minusDays(1), leader)).containsExactly("safety.dueGone");
        assertThat(look("gone", TODAY, leader)).containsExactly("safety.ownerUnknown");
        assertThat(look("nobody", TODAY, leader)).containsExactly("safety.ownerUnknown");
    }

    @Test
    void it_is_new_then_looked_at_then_closed_and_closed_once() {
        say("nameless", reported(1));
        assertThat(miss().state()).isEqualTo(NearMiss.State.NEW);
        assertThat(miss().nameless()).isTrue();
        say("5", new NearMissLookedAt(1, "9", TODAY));
        assertThat(miss().state()).isEqualTo(NearMiss.State.LOOKED_AT);
        assertThat(miss().owner()).contains("9");
        say("5", new NearMissLookedAt(1, "8", TODAY.plusDays(3)));
        assertThat(miss().owner()).contains("8");
        assertThat(miss().dueOn()).contains(TODAY.plusDays(3));
        say("8", new NearMissClosed(1, "a guard was put on"));
        say("8", new NearMissClosed(1, "something else"));
        assertThat(miss().state()).isEqualTo(NearMiss.State.CLOSED);
        assertThat(miss().changed()).contains("a guard was put on");
        assertThat(close("again", person("5", Role.TEAM_LEADER))).containsExactly("safety.closedAlready");
        assertThat(look("9", TODAY, person("5", Role.TEAM_LEADER))).containsExactly("safety.closedAlready");
    }

    @Test
    void words_stay_in_the_order_in_which_they_came_and_with_their_near_miss() {
        say("1", reported(1));
        say("2", reported(2));
        say("1", new NearMissTold(1, "the hook"));
        say("3", new NearMissTold(1, "it slipped"));
        assertThat(miss().told())
                .extracting(entry -> ((NearMissTold) entry.saying()).words())
                .containsExactly("the hook", "it slipped");
        assertThat(NearMisses.of(works).number(2).orElseThrow().told()).isEmpty();
        assertThat(tell(" ")).containsExactly("safety.wordsMissing");
        assertThat(tell("x".repeat(2001))).containsExactly("safety.wordsMissing");
        assertThat(tell("x".repeat(2000))).isEmpty();
    }

    @Test
    void closing_says_what_was_changed() {
        say("1", reported(1));
        Person leader = person("5", Role.TEAM_LEADER);
        assertThat(close("", leader)).containsExactly("safety.changedMissing");
        assertThat(close("x".repeat(2001), leader)).containsExactly("safety.changedMissing");
        var asked = new ToClose(UUID.randomUUID(), 7, "a guard was put on");
        assertThat(keys(MissRules.close(Optional.empty(), asked, Optional.of(leader))))
                .containsExactly("safety.missNotFound");
    }

    @Test
    void each_reason_leads_to_the_field_or_names_the_near_miss() {
        say("1", reported(1));
        Person leader = person("5", Role.TEAM_LEADER);
        assertThat(close("x".repeat(2000), leader)).isEmpty();
        assertThat(atField(
                        MissRules.close(Optional.of(miss()), new ToClose(UUID.randomUUID(), 1, " "), Optional.empty())))
                .containsExactly("safety.mayNotClose 1", "safety.changedMissing #changed");
        assertThat(atField(MissRules.lookAt(
                        Optional.empty(),
                        new ToLookAt(UUID.randomUUID(), 7, "9", TODAY.minusDays(1)),
                        Optional.empty(),
                        Optional.of(leader),
                        TODAY)))
                .containsExactly("safety.missNotFound 7", "safety.ownerUnknown #owner", "safety.dueGone #due");
        assertThat(atField(MissRules.tell(Optional.empty(), new ToTell(UUID.randomUUID(), 7, ""))))
                .containsExactly("safety.missNotFound 7", "safety.wordsMissing #words");
        assertThat(atField(MissRules.mayLookAt(miss(), Optional.empty()))).containsExactly("safety.mayNotLookAt 1");
    }

    @Test
    void near_misses_are_numbered_from_one_and_open_until_closed() {
        assertThat(NearMisses.of(works).next()).isEqualTo(1);
        say("1", reported(1));
        say("1", reported(2));
        say("1", new StopTold(1, "of another matter"));
        assertThat(NearMisses.of(works).next()).isEqualTo(3);
        assertThat(NearMisses.of(works).number(0)).isEmpty();
        assertThat(NearMisses.of(works).number(3)).isEmpty();
        assertThat(miss().nameless()).isFalse();
        assertThat(miss().owner()).isEmpty();
        assertThat(miss().dueOn()).isEmpty();
        assertThat(miss().changed()).isEmpty();
        say("5", new NearMissClosed(1, "a guard was put on"));
        assertThat(NearMisses.of(works).open()).extracting(NearMiss::number).containsExactly(2);
        say("5", new NearMissTold(1, "it held"));
        say("5", new NearMissLookedAt(1, "9", TODAY));
        assertThat(miss().state()).as("what is closed stays closed").isEqualTo(NearMiss.State.CLOSED);
        assertThat(miss().told()).hasSize(1);
    }

    private static List<String> atField(List<Reason> reasons) {
        return reasons.stream()
                .map(reason ->
                        reason.key() + " " + reason.lift().orElseGet(() -> String.join(", ", reason.arguments())))
                .toList();
    }

    private NearMiss miss() {
        return NearMisses.of(works).number(1).orElseThrow();
    }

    private List<String> look(String owner, LocalDate due, Person who) {
        Optional<Person> known = switch (owner) {
            case "nobody" -> Optional.empty();
            case "gone" -> Optional.of(new Person("gone", List.of(), true, Map.of()));
            default -> Optional.of(person(owner, Role.TECHNICIAN));
        };
        return keys(MissRules.lookAt(
                Optional.of(miss()), new ToLookAt(UUID.randomUUID(), 1, owner, due), known, Optional.of(who), TODAY));
    }

    private List<String> close(String changed, Person who) {
        return keys(MissRules.close(Optional.of(miss()), new ToClose(UUID.randomUUID(), 1, changed), Optional.of(who)));
    }

    private List<String> tell(String words) {
        return keys(MissRules.tell(Optional.of(miss()), new ToTell(UUID.randomUUID(), 1, words)));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static NearMissReported reported(int number) {
        return new NearMissReported(number, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Person person(String number, Role role) {
        return new Person(number, List.of(role), false, Map.of());
    }

    private void say(String who, Saying saying) {
        works = works.and(new Entry(
                UUID.randomUUID(), Subject.works(), works.number() + 1, Moment.of(who, NOW), "0".repeat(64), saying));
    }
}

package wainbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.hibernate.exception.ConstraintViolationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.house.PostgreSql;
import wainbook.ledger.verification.Verify;
import wainbook.works.Role;
import wainbook.works.WorksSaying;

@QuarkusTest
@WithTestResource(value = PostgreSql.class, scope = TestResourceScope.GLOBAL)
@Tag("database")
class LedgerTest {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00.123456Z");
    private static final Actor CLERK = Actor.of("1001", Clock.fixed(NOON, ZoneOffset.UTC));

    record GiveRoles(UUID id, String person, List<Role> roles, Optional<Long> seen) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.person(person));
        }

        @Override
        public Class<? extends Saying> says() {
            return WorksSaying.Engaged.class;
        }
    }

    @Inject
    Ledger ledger;

    @Inject
    Verify verify;

    @Test
    void appends_in_order_each_entry_following_the_one_before() {
        String person = person();
        give(person, UUID.randomUUID(), Role.AUDITOR);
        ledger.write(
                asked(person, UUID.randomUUID(), Optional.empty()),
                CLERK,
                reading -> Decision.say(Subject.person(person), new WorksSaying.Left("moved away"))
                        .andSay(Subject.person(person), new WorksSaying.RolesGiven(List.of())));
        History history = ledger.history(Subject.person(person));
        assertThat(history.entries()).extracting(Entry::number).containsExactly(1L, 2L, 3L);
        assertThat(history.entries()).extracting(entry -> entry.moment().at()).containsOnly(NOON);
        assertThat(verify.everything().findings()).isEmpty();
    }

    @Test
    void the_same_request_again_writes_nothing_and_gives_the_same_answer() {
        String person = person();
        UUID id = UUID.randomUUID();
        Outcome<Entry> first = give(person, id, Role.AUDITOR);
        Outcome<Entry> again = give(person, id, Role.AUDITOR);
        assertThat(again).isEqualTo(Outcome.alreadyDone(first.fold(entry -> entry, reasons -> null)));
        assertThat(ledger.history(Subject.person(person)).number()).isEqualTo(1);
    }

    @Test
    void another_request_under_the_same_id_is_refused_naming_the_field_that_differs() {
        String person = person();
        UUID id = UUID.randomUUID();
        give(person, id, Role.AUDITOR);
        assertThat(give(person, id, Role.INSPECTOR).reasons())
                .containsExactly(Reason.of("ledger.otherUnderSameId", Reason.WORKS_RULE, id, "roles"));
        assertThat(ledger.history(Subject.person(person)).number()).isEqualTo(1);
    }

    @Test
    void an_id_that_stands_in_another_stream_is_refused() {
        UUID id = UUID.randomUUID();
        give(person(), id, Role.AUDITOR);
        String other = person();
        assertThat(give(other, id, Role.AUDITOR).reasons())
                .extracting(Reason::key)
                .containsExactly("ledger.writtenMeanwhile");
        assertThat(ledger.history(Subject.person(other)).isEmpty()).isTrue();
    }

    @Test
    void whoever_judges_a_whole_is_told_when_it_changed_since() {
        String person = person();
        give(person, UUID.randomUUID(), Role.AUDITOR);
        var stale = ledger.write(
                asked(person, UUID.randomUUID(), Optional.of(0L)),
                CLERK,
                reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        assertThat(stale.reasons())
                .containsExactly(Reason.of("ledger.changedSince", Reason.WORKS_RULE, person, "engaged by 1001"));
    }

    @Test
    void acts_done_together_read_what_the_former_ones_wrote_and_follow_them() {
        String person = person();
        ledger.together(60, () -> {
            give(person, UUID.randomUUID(), Role.AUDITOR);
            assertThat(ledger.history(Subject.person(person)).number()).isEqualTo(1);
            return ledger.write(
                    asked(person, UUID.randomUUID(), Optional.of(1L)),
                    CLERK,
                    reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        });
        History history = ledger.history(Subject.person(person));
        assertThat(history.entries()).extracting(Entry::number).containsExactly(1L, 2L);
        assertThat(verify.everything().findings()).isEmpty();
    }

    @Test
    void of_acts_done_together_all_are_written_or_none() {
        String one = person();
        String other = person();
        UUID id = UUID.randomUUID();
        assertThatThrownBy(() -> ledger.together(60, () -> {
                    give(one, id, Role.AUDITOR);
                    return give(other, id, Role.AUDITOR);
                }))
                .isInstanceOf(ConstraintViolationException.class);
        assertThat(ledger.history(Subject.person(one)).isEmpty()).isTrue();
        assertThat(ledger.history(Subject.person(other)).isEmpty()).isTrue();
    }

    @Test
    void an_act_refused_among_others_ends_none_of_them() {
        String person = person();
        ledger.together(60, () -> {
            give(person, UUID.randomUUID(), Role.AUDITOR);
            return ledger.write(
                    asked(person, UUID.randomUUID(), Optional.of(0L)),
                    CLERK,
                    reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        });
        assertThat(ledger.history(Subject.person(person)).number()).isEqualTo(1);
    }

    @Test
    void a_server_clock_that_fell_behind_stops_writing() {
        String person = person();
        give(person, UUID.randomUUID(), Role.AUDITOR);
        var late = Actor.of("1001", Clock.fixed(NOON.minusSeconds(3), ZoneOffset.UTC));
        var refused = ledger.write(
                asked(person, UUID.randomUUID(), Optional.empty()),
                late,
                reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        assertThat(refused.reasons()).extracting(Reason::key).containsExactly("ledger.clockBehind");
    }

    @Test
    void a_request_that_was_written_is_answered_even_when_the_clock_fell_behind() {
        String person = person();
        UUID id = UUID.randomUUID();
        Outcome<Entry> first = give(person, id, Role.AUDITOR);
        var late = Actor.of("1001", Clock.fixed(NOON.minusSeconds(3), ZoneOffset.UTC));
        var again = ledger.write(
                new GiveRoles(id, person, List.of(Role.AUDITOR), Optional.empty()),
                late,
                reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        assertThat(again).isEqualTo(Outcome.alreadyDone(first.fold(entry -> entry, reasons -> null)));
    }

    @Test
    void a_server_clock_that_slipped_a_little_never_makes_an_entry_earlier_than_the_one_before() {
        String person = person();
        give(person, UUID.randomUUID(), Role.AUDITOR);
        var slipped = Actor.of("1001", Clock.fixed(NOON.minusSeconds(1), ZoneOffset.UTC));
        ledger.write(
                asked(person, UUID.randomUUID(), Optional.empty()),
                slipped,
                reading -> Decision.say(Subject.person(person), new WorksSaying.Left("gone")));
        assertThat(ledger.history(Subject.person(person)).entries())
                .extracting(entry -> entry.moment().at())
                .containsExactly(NOON, NOON);
    }

    @Test
    void many_people_appending_at_once_all_succeed_in_some_order() throws Exception {
        String person = person();
        give(person, UUID.randomUUID(), Role.AUDITOR);
        int people = 8;
        var barrier = new CyclicBarrier(people);
        var crew = Executors.newFixedThreadPool(people);
        List<Future<Outcome<Entry>>> outcomes = new ArrayList<>();
        for (int i = 0; i < people; i++) {
            outcomes.add(crew.submit(() -> {
                barrier.await();
                return ledger.write(
                        asked(person, UUID.randomUUID(), Optional.empty()),
                        CLERK,
                        reading -> Decision.say(Subject.person(person), new WorksSaying.RolesGiven(List.of())));
            }));
        }
        for (var outcome : outcomes) {
            assertThat(outcome.get().reasons()).isEmpty();
        }
        crew.shutdown();
        assertThat(ledger.history(Subject.person(person)).entries())
                .extracting(Entry::number)
                .containsExactly(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L, 9L);
        assertThat(verify.everything().findings()).isEmpty();
    }

    @Test
    void two_people_opening_one_stream_at_once_both_succeed_or_one_is_told_to_look_again() throws Exception {
        for (int round = 0; round < 10; round++) {
            String person = person();
            var barrier = new CyclicBarrier(2);
            var crew = Executors.newFixedThreadPool(2);
            Decide decide = reading -> reading.of(Subject.person(person)).isEmpty()
                    ? Decision.say(
                            Subject.person(person), new WorksSaying.Engaged("0".repeat(64), List.of(Role.AUDITOR)))
                    : Decision.refuse(Reason.of("ledger.writtenMeanwhile", Reason.WORKS_RULE, person));
            List<Future<Outcome<Entry>>> outcomes = new ArrayList<>();
            for (int i = 0; i < 2; i++) {
                outcomes.add(crew.submit(() -> {
                    barrier.await();
                    return ledger.write(asked(person, UUID.randomUUID(), Optional.empty()), CLERK, decide);
                }));
            }
            List<Integer> refusals = new ArrayList<>();
            for (var outcome : outcomes) {
                refusals.add(outcome.get().reasons().size());
            }
            crew.shutdown();
            assertThat(refusals).containsExactlyInAnyOrder(0, 1);
            assertThat(ledger.history(Subject.person(person)).number()).isEqualTo(1);
        }
    }

    private Outcome<Entry> give(String person, UUID id, Role role) {
        return ledger.write(
                new GiveRoles(id, person, List.of(role), Optional.empty()),
                CLERK,
                reading ->
                        Decision.say(Subject.person(person), new WorksSaying.Engaged("0".repeat(64), List.of(role))));
    }

    private static GiveRoles asked(String person, UUID id, Optional<Long> seen) {
        return new GiveRoles(id, person, List.of(), seen);
    }

    private static String person() {
        return "T" + UUID.randomUUID();
    }
}

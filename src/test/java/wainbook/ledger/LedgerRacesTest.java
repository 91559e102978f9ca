package wainbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.arc.Unremovable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.verification.Verify;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.WorksSaying.Engaged;
import wainbook.works.WorksSaying.RolesGiven;

@QuarkusTest
@Tag("database")
class LedgerRacesTest {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final Actor CLERK = Actor.of("1001", Clock.fixed(NOON, ZoneOffset.UTC));
    private static final String BREAKS = "breaks the tables";

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    /** Reads the stream that is being written, then fails: what a fault in a room's tables would do. */
    @ApplicationScoped
    @Unremovable
    static class Broken implements Projection {

        private final Ledger ledger;

        Broken(Ledger ledger) {
            this.ledger = ledger;
        }

        @Override
        public void take(Entry entry) {
            if (entry.saying() instanceof WorksSaying.Left left && left.reason().equals(BREAKS)) {
                assertThat(ledger.history(entry.subject()).last(WorksSaying.Left.class))
                        .isPresent();
                throw new IllegalStateException(BREAKS);
            }
        }

        @Override
        public void forget() {
            // No tables.
        }
    }

    @Inject
    Ledger ledger;

    @Inject
    Verify verify;

    private final ExecutorService crew = Executors.newFixedThreadPool(8);

    @AfterEach
    void everybody_goes_home() {
        crew.shutdownNow();
    }

    @Test
    void two_streams_written_in_opposite_order_never_wait_for_each_other() throws Exception {
        for (int round = 0; round < 20; round++) {
            Subject one = person();
            Subject other = person();
            engage(one);
            engage(other);
            var outcomes = atOnce(List.of(() -> both(one, other, () -> {}), () -> both(other, one, () -> {})));
            assertThat(outcomes)
                    .allSatisfy(outcome -> assertThat(outcome.reasons()).isEmpty());
            assertThat(List.of(
                            ledger.history(one).number(), ledger.history(other).number()))
                    .containsExactly(3L, 3L);
        }
    }

    /** Both have decided before either opens a stream, since there is nothing yet that they could lock. */
    @Test
    void two_streams_opened_in_opposite_order_never_wait_for_each_other() throws Exception {
        for (int round = 0; round < 20; round++) {
            Subject one = person();
            Subject other = person();
            var decided = new CyclicBarrier(2);
            var outcomes =
                    atOnce(List.of(() -> both(one, other, onceAt(decided)), () -> both(other, one, onceAt(decided))));
            assertThat(outcomes)
                    .allSatisfy(outcome -> assertThat(outcome.reasons()).isEmpty());
            assertThat(List.of(
                            ledger.history(one).number(), ledger.history(other).number()))
                    .containsExactly(2L, 2L);
        }
    }

    @Test
    void a_fault_in_the_tables_undoes_the_whole_act() {
        Subject person = person();
        Subject other = person();
        engage(person);
        UUID id = UUID.randomUUID();
        assertThatThrownBy(() -> ledger.write(
                        new Told(id, List.of(person, other), RolesGiven.class),
                        CLERK,
                        reading -> Decision.say(person, new RolesGiven(List.of(Role.AUDITOR)))
                                .andSay(other, engaged())
                                .andSay(person, new WorksSaying.Left(BREAKS))))
                .hasStackTraceContaining(BREAKS);

        assertThat(ledger.history(person).number()).isEqualTo(1);
        assertThat(ledger.history(other).isEmpty()).isTrue();
        assertThat(QuarkusTransaction.requiringNew().call(() -> PersonRow.<PersonRow>findById(person.code()).roles))
                .isEqualTo(Role.technician);
        assertThat(verify.everything().findings()).isEmpty();
    }

    /** The table that failed had read the entry: it must not stay in memory as if it had been written. */
    @Test
    void what_was_read_in_an_act_that_failed_is_forgotten() {
        Subject person = person();
        engage(person);
        assertThatThrownBy(() -> ledger.write(
                        new Told(UUID.randomUUID(), List.of(person), WorksSaying.Left.class),
                        CLERK,
                        reading -> Decision.say(person, new WorksSaying.Left(BREAKS))))
                .hasStackTraceContaining(BREAKS);
        assertThat(ledger.history(person).number()).isEqualTo(1);

        ledger.write(
                new Told(UUID.randomUUID(), List.of(person), RolesGiven.class),
                CLERK,
                reading -> Decision.say(person, new RolesGiven(List.of(Role.INSPECTOR))));
        assertThat(ledger.history(person).entries()).extracting(Entry::number).containsExactly(1L, 2L);
        assertThat(ledger.history(person).last(RolesGiven.class)).isPresent();
    }

    @Test
    void readers_and_verifiers_beside_writers_see_whole_acts_only() throws Exception {
        Subject person = person();
        engage(person);
        int acts = 25;
        Callable<Outcome<Entry>> writer = () -> {
            Outcome<Entry> last = null;
            for (int i = 0; i < acts; i++) {
                last = ledger.write(
                        new Told(UUID.randomUUID(), List.of(person), RolesGiven.class),
                        CLERK,
                        reading -> Decision.say(person, new RolesGiven(List.of(Role.AUDITOR)))
                                .andSay(person, new RolesGiven(List.of())));
                assertThat(last.reasons()).isEmpty();
            }
            return last;
        };
        Future<Outcome<Entry>> one = crew.submit(writer);
        Future<Outcome<Entry>> two = crew.submit(writer);
        long before = 0;
        do {
            List<Entry> entries = ledger.history(person).entries();
            assertThat(entries.size() % 2).as("each act adds two").isEqualTo(1);
            assertThat(entries.get(entries.size() - 1).number()).isEqualTo(entries.size());
            assertThat((long) entries.size()).isGreaterThanOrEqualTo(before);
            before = entries.size();
            assertThat(verify.everything().findings()).isEmpty();
        } while (!one.isDone() || !two.isDone());
        one.get();
        two.get();
        assertThat(ledger.history(person).number()).isEqualTo(1 + 4L * acts);
        assertThat(verify.everything().findings()).isEmpty();
    }

    @Test
    void the_same_request_sent_many_times_at_once_is_written_once() throws Exception {
        for (int round = 0; round < 5; round++) {
            Subject person = person();
            var asked = new Told(UUID.randomUUID(), List.of(person), Engaged.class);
            Callable<Outcome<Entry>> send =
                    () -> ledger.write(asked, CLERK, reading -> Decision.say(person, engaged()));
            var outcomes = atOnce(List.of(send, send, send, send));
            assertThat(outcomes)
                    .allSatisfy(outcome -> assertThat(outcome.reasons()).isEmpty());
            assertThat(outcomes)
                    .filteredOn(outcome -> outcome.<Boolean>fold(done -> true, again -> false, refused -> false))
                    .hasSize(1);
            assertThat(ledger.history(person).number()).isEqualTo(1);
        }
    }

    private Outcome<Entry> both(Subject first, Subject second, Runnable meanwhile) {
        return ledger.write(new Told(UUID.randomUUID(), List.of(first, second), Saying.class), CLERK, reading -> {
            meanwhile.run();
            return Decision.say(first, next(reading, first)).andSay(second, next(reading, second));
        });
    }

    /** Waits there the first time; whoever is sent back to decide again goes on. */
    private static Runnable onceAt(CyclicBarrier barrier) {
        var first = new AtomicBoolean(true);
        return () -> {
            if (first.getAndSet(false)) {
                try {
                    barrier.await();
                } catch (InterruptedException | BrokenBarrierException nobodyCame) {
                    throw new IllegalStateException(nobodyCame);
                }
            }
        };
    }

    private static Saying next(Reading reading, Subject person) {
        return reading.of(person).isEmpty() ? engaged() : new RolesGiven(List.of(Role.AUDITOR));
    }

    private void engage(Subject person) {
        ledger.write(
                new Told(UUID.randomUUID(), List.of(person), Engaged.class),
                CLERK,
                reading -> Decision.say(person, engaged()));
    }

    private static Engaged engaged() {
        return new Engaged("0".repeat(64), List.of(Role.TECHNICIAN));
    }

    private List<Outcome<Entry>> atOnce(List<Callable<Outcome<Entry>>> acts) throws Exception {
        var barrier = new CyclicBarrier(acts.size());
        var running = new ArrayList<Future<Outcome<Entry>>>();
        for (Callable<Outcome<Entry>> act : acts) {
            running.add(crew.submit(() -> {
                barrier.await();
                return act.call();
            }));
        }
        var outcomes = new ArrayList<Outcome<Entry>>();
        for (Future<Outcome<Entry>> one : running) {
            outcomes.add(one.get());
        }
        return outcomes;
    }

    private static Subject person() {
        return Subject.person("R" + UUID.randomUUID());
    }
}

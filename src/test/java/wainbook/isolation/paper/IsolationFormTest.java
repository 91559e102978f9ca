package wainbook.isolation.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.isolation.Cast;
import wainbook.isolation.paper.IsolationForm.Checked;
import wainbook.isolation.paper.IsolationForm.Locked;
import wainbook.isolation.paper.IsolationForm.Opened;
import wainbook.isolation.paper.IsolationForm.Permitted;
import wainbook.isolation.paper.IsolationForm.Proved;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Returned;
import wainbook.isolation.paper.IsolationForm.ShutDown;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.isolation.paper.IsolationForm.Touched;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.OnPaperSaying.PaperEnded;
import wainbook.isolation.paper.OnPaperSaying.PaperInUse;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;

/** Who and which times stand on an isolation form, when it is at its end, and which forms may still have locks hanging by them. */
class IsolationFormTest {

    private static final Instant BEGUN = Instant.parse("2026-03-02T06:00:00Z");
    private static final int LAST = 17;

    private final List<Locked> locks = new ArrayList<>(List.of(
            new Locked("isolator", "L-1", "T-1", at(3), Optional.empty()),
            new Locked("worker", "L-2", "T-2", at(4), Optional.of(at(14)))));
    private Optional<Restored> restored = Optional.of(new Restored("restorer", at(LAST), "L-1"));
    private History vehicle = History.empty(Subject.workOrder("WB-1"));

    @Test
    void everybody_who_is_named_on_it_is_known() {
        assertThat(form().people())
                .containsExactly(
                        "canceller",
                        "checker",
                        "isolator",
                        "issuer",
                        "prover",
                        "proverAfter",
                        "reader",
                        "receiver",
                        "restorer",
                        "returner",
                        "witness",
                        "worker");
        assertThat(bare().people()).containsExactly("isolator");
    }

    @Test
    void every_time_that_stands_on_it_is_known_but_the_end_of_the_permit() {
        assertThat(form().times())
                .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(0, LAST)
                        .mapToObj(IsolationFormTest::at)
                        .toList());
        assertThat(bare().times()).containsExactly(BEGUN);
    }

    @Test
    void tester_and_known_source_are_named_as_often_as_they_were_used() {
        assertThat(form().provings()).extracting(Proved::who).containsExactly("prover", "proverAfter");
        assertThat(bare().provings()).isEmpty();
    }

    @Test
    void it_is_at_its_end_when_every_lock_but_the_last_was_off_at_the_restoration() {
        assertThat(form().closed()).isTrue();
        locks.set(1, new Locked("worker", "L-2", "T-2", at(4), Optional.of(at(LAST))));
        assertThat(form().closed()).as("within the same minute").isTrue();
        locks.set(1, new Locked("worker", "L-2", "T-2", at(4), Optional.of(at(LAST + 1))));
        assertThat(form().closed()).as("a minute after it").isFalse();
        locks.set(1, new Locked("worker", "L-2", "T-2", at(4), Optional.empty()));
        assertThat(form().closed()).as("it hangs still").isFalse();
    }

    @Test
    void without_a_restoration_it_is_not_at_its_end_though_every_lock_is_off() {
        restored = Optional.empty();
        locks.set(0, new Locked("isolator", "L-1", "T-1", at(3), Optional.of(at(16))));
        assertThat(form().closed()).isFalse();
    }

    @Test
    void a_form_in_use_may_have_locks_hanging_by_it_until_it_ends_or_is_typed_in_to_its_end() {
        say(new PaperInUse("F-0002"));
        say(new PaperInUse("F-0001"));
        assertThat(papers().open()).containsExactly("F-0001", "F-0002");
        assertThat(papers().written()).isEmpty();
        say(new PaperEnded("F-0001", "no such form here"));
        assertThat(papers().open()).containsExactly("F-0002");
        say(onPaper("F-0002", false));
        assertThat(papers().open()).containsExactly("F-0002");
        say(onPaper("F-0002", true));
        assertThat(papers().open()).isEmpty();
        assertThat(papers().written()).hasSize(1);
        say(new PaperInUse("F-0002"));
        assertThat(papers().open()).as("somebody works by it again").containsExactly("F-0002");
        assertThat(papers().written()).as("and what was written stays").hasSize(1);
        say(new PaperEnded("F-0002", "looked"));
        assertThat(papers().open()).isEmpty();
        assertThat(papers().written()).hasSize(1);
    }

    @Test
    void whoever_stands_on_it_typed_it_in_or_compared_it_had_a_hand_in_it() {
        OnPaper paper = onPaper("F-0001", true);
        for (String person : List.of("isolator", "worker", "typist", "comparer")) {
            assertThat(paper.by(person)).as(person).isTrue();
        }
        assertThat(paper.by("stranger")).isFalse();
    }

    private OnPaper onPaper(String form, boolean closed) {
        return new OnPaper(
                form,
                EvidenceFile.of(new byte[] {1}, "image/png"),
                Cast.PLAN,
                form(),
                List.of(),
                closed,
                "typist",
                "comparer");
    }

    private IsolationForm form() {
        return new IsolationForm(
                "isolator",
                BEGUN,
                List.of(),
                Optional.of(new ShutDown(at(1), "BOX-1", List.of("KEY-1"))),
                List.of(new Opened("PACK-1", at(2))),
                locks,
                Optional.of(proved("prover", 5)),
                List.of(new Touched("JB-A", false, at(6), List.of()), new Touched("JB-A", true, at(7), List.of())),
                Optional.of(proved("proverAfter", 8)),
                Optional.of(new Signed("witness", at(9))),
                Optional.of(new Permitted("issuer", at(10), "receiver", "swap", List.of(), at(500))),
                List.of(new Signed("receiver", at(11)), new Signed("reader", at(12))),
                Optional.of(new Returned("returner", at(13), false)),
                Optional.of(new Signed("canceller", at(15))),
                List.of(new Checked("COVERS", "checker", at(16))),
                restored);
    }

    private static IsolationForm bare() {
        return new IsolationForm(
                "isolator",
                BEGUN,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty());
    }

    private static Proved proved(String who, int minute) {
        return new Proved(who, at(minute), "VT-1", "PU-1", new BigDecimal("240"), new BigDecimal("239"));
    }

    private PaperIsolations papers() {
        return PaperIsolations.of(vehicle);
    }

    private void say(Saying saying) {
        vehicle = vehicle.and(new Entry(
                new UUID(0, vehicle.number()),
                vehicle.subject(),
                vehicle.number() + 1,
                Moment.of("7001", BEGUN),
                "0".repeat(64),
                saying));
    }

    private static Instant at(int minute) {
        return BEGUN.plus(Duration.ofMinutes(minute));
    }
}

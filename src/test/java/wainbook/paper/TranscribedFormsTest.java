package wainbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Locked;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.paper.PaperForm.State;
import wainbook.paper.PaperSaying.Agreed;
import wainbook.paper.PaperSaying.FormInUse;
import wainbook.paper.PaperSaying.FormSpoiled;
import wainbook.paper.PaperSaying.FormsPrinted;
import wainbook.paper.PaperSaying.IsolationTranscribed;
import wainbook.paper.PaperSaying.ItemsTranscribed;
import wainbook.paper.PaperSaying.PermitTranscribed;
import wainbook.paper.PaperSaying.SentBack;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.paper.PaperSaying.UseEnded;
import wainbook.permit.PermitForm;
import wainbook.permit.Work;
import wainbook.station.paper.PaperLine;

/** Isolations and permits on paper: when a form is at its end, what it names, and who may compare it. */
class TranscribedFormsTest {

    private static final Instant PRINTED = Instant.parse("2026-03-02T06:00:30Z");
    private static final Instant NOW = PRINTED.plus(Duration.ofHours(4));
    private static final EvidenceFile PICTURE = EvidenceFile.of(new byte[] {1}, "image/png");

    private History works = History.empty(Subject.works());

    @Test
    void an_isolation_is_in_use_while_a_lock_is_on_and_entered_once_the_last_is_off() {
        printed(Sort.ISOLATION);
        say("7001", new FormInUse(1, "WB-1"));
        say("7002", isolation(1, false));
        assertThat(state()).isEqualTo(State.WAITING);
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(state()).isEqualTo(State.IN_USE);
        assertThat(form().usedAt()).containsExactly("WB-1");
        say("7002", isolation(2, true));
        say("7003", new Agreed(1, 2, "WB-1"));
        assertThat(state()).isEqualTo(State.ENTERED);
        assertThat(form().usedAt()).isEmpty();
    }

    @Test
    void one_that_nobody_said_was_in_use_is_in_use_all_the_same_while_it_is_open() {
        printed(Sort.ISOLATION);
        say("7002", isolation(1, false));
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(form().usedAt()).isEmpty();
        assertThat(state()).isEqualTo(State.IN_USE);
        say("7001", new UseEnded(1, "WB-1", "locks looked for and none found"));
        assertThat(state()).isEqualTo(State.ENTERED);
        say("7002", isolation(2, false));
        say("7003", new Agreed(1, 2, "WB-1"));
        assertThat(state()).as("typed in again, and open again").isEqualTo(State.IN_USE);
    }

    @Test
    void a_permit_is_in_use_until_it_is_closed() {
        printed(Sort.PERMIT);
        say("7002", permit(1, Optional.empty()));
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(state()).isEqualTo(State.IN_USE);
        say("7002", permit(2, Optional.of(NOW)));
        say("7003", new Agreed(1, 2, "WB-1"));
        assertThat(state()).isEqualTo(State.ENTERED);
    }

    @Test
    void a_form_ends_at_the_vehicle_that_was_agreed_and_stays_in_use_at_the_other() {
        printed(Sort.ISOLATION);
        say("7001", new FormInUse(1, "WB-2"));
        say("7001", new FormInUse(1, "WB-1"));
        say("7001", new FormInUse(1, "WB-2"));
        assertThat(form().usedAt()).containsExactly("WB-1", "WB-2");
        say("7002", isolation(1, true));
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(form().usedAt()).containsExactly("WB-2");
        assertThat(state()).isEqualTo(State.IN_USE);
        say("7003", new UseEnded(1, "WB-2", "the wrong number"));
        assertThat(state()).isEqualTo(State.ENTERED);
    }

    @Test
    void what_was_sent_back_is_said_until_it_is_typed_in_again() {
        printed(Sort.PERMIT);
        say("7002", permit(1, Optional.of(NOW)));
        say("7003", new SentBack(1, 1, "line 3 cannot be read"));
        assertThat(form().sentBack()).isPresent();
        assertThat(form().agreed()).isEmpty();
        assertThat(form().waiting()).isEmpty();
        say("7002", permit(2, Optional.of(NOW)));
        assertThat(form().sentBack()).isEmpty();
        assertThat(form().waiting()).isEqualTo(form().last());
        say("7003", new Agreed(1, 2, "WB-1"));
        assertThat(form().sentBack()).isEmpty();
        assertThat(form().agreed()).isEqualTo(form().last());
    }

    @Test
    void a_form_that_waits_is_entered_or_was_spoiled_is_not_typed_in() {
        printed(Sort.PERMIT);
        assertThat(typedIn(written(Optional.of(NOW)))).isEmpty();
        say("7002", permit(1, Optional.of(NOW)));
        assertThat(typedIn(written(Optional.of(NOW)))).containsExactly("paper.waits");
        assertThat(against(written(Optional.of(NOW))).get(0).lift()).contains("/paper/F-0001");
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(typedIn(written(Optional.of(NOW)))).containsExactly("paper.enteredAlready");
        works = History.empty(Subject.works());
        printed(Sort.PERMIT);
        say("7005", new FormSpoiled(1, "coffee"));
        assertThat(typedIn(written(Optional.of(NOW)))).containsExactly("paper.spoiledOne");
    }

    @Test
    void a_form_that_said_that_locks_were_still_on_is_typed_in_again() {
        printed(Sort.ISOLATION);
        say("7002", isolation(1, false));
        say("7003", new Agreed(1, 1, "WB-1"));
        assertThat(typedIn(new Written.Isolation(form(true)))).isEmpty();
    }

    @Test
    void what_is_typed_in_is_of_the_sort_that_was_printed_for_a_vehicle_in_the_works() {
        printed(Sort.ISOLATION);
        assertThat(typedIn(written(Optional.of(NOW)))).containsExactly("paper.otherSort");
        List<Reason> gone = new TranscribingRules(
                        form(), PaperForms.of(works), "WB-1", new Written.Isolation(form(true)), NOW)
                .against(Optional.of(PICTURE), false, number -> true);
        assertThat(keys(gone)).containsExactly("paper.noVehicle");
        assertThat(gone.get(0).lift()).contains("#vehicle");
    }

    @ParameterizedTest
    @ValueSource(strings = {"image/jpeg", "image/png", "image/webp"})
    void each_sort_of_photograph_will_do_and_the_same_form_may_show_its_own_again(String mediaType) {
        printed(Sort.PERMIT);
        EvidenceFile picture = EvidenceFile.of(new byte[] {7}, mediaType);
        say("7002", new PermitTranscribed(1, 1, "WB-1", picture, permitForm(Optional.of(NOW))));
        say("7003", new SentBack(1, 1, "line 3 cannot be read"));
        assertThat(keys(new TranscribingRules(form(), PaperForms.of(works), "WB-1", written(Optional.of(NOW)), NOW)
                        .against(Optional.of(picture), true, number -> true)))
                .isEmpty();
    }

    @Test
    void the_earliest_time_before_the_print_and_the_latest_in_the_future_are_named() {
        printed(Sort.PERMIT);
        var early = PRINTED.minusSeconds(90);
        var late = NOW.plusSeconds(120);
        PermitForm form = new PermitForm(
                Work.HEIGHT,
                "roof",
                List.of(),
                List.of(),
                "7001",
                early,
                "7002",
                Optional.of(early.plusSeconds(10)),
                NOW.plus(Duration.ofHours(9)),
                Optional.of(late.minusSeconds(10)),
                Optional.of(late));
        List<Reason> against = against(new Written.Permit(form));
        assertThat(keys(against)).containsExactly("paper.beforePrinted", "paper.inTheFuture");
        assertThat(against.get(0).arguments()).containsExactly(early.toString(), "2026-03-02T06:00:00Z");
        assertThat(against.get(1).arguments()).containsExactly(late.toString());
    }

    @Test
    void everybody_named_on_a_form_is_known_to_the_works() {
        printed(Sort.PERMIT);
        List<Reason> against = new TranscribingRules(
                        form(), PaperForms.of(works), "WB-1", written(Optional.of(NOW)), NOW)
                .against(Optional.of(PICTURE), true, "7001"::equals);
        assertThat(keys(against)).containsExactly("paper.personUnknown");
        assertThat(against.get(0).arguments()).containsExactly("7002");
        assertThat(new Written.Permit(permitForm("7001", "7001", Optional.empty())).people())
                .containsExactly("7001");
        assertThat(new Written.Items(List.of(line("7009"), line("7003"), line("7009"))).people())
                .as("each once, as they stand on the form")
                .containsExactly("7009", "7003");
    }

    @Test
    void an_isolation_is_compared_by_or_after_somebody_who_stands_on_it() {
        printed(Sort.ISOLATION);
        say("7001", isolation(1, true));
        assertThat(comparing("9999")).as("whoever typed it in stands on it").isEmpty();
        works = History.empty(Subject.works());
        printed(Sort.ISOLATION);
        say("8888", isolation(1, true));
        assertThat(comparing("9999")).containsExactly("paper.neitherNamed");
        assertThat(comparing("7002")).isEmpty();
        assertThat(comparing("8888")).containsExactly("paper.ownTranscription", "paper.neitherNamed");
        assertThat(TranscribingRules.againstComparing(form(), 1, "9999").get(0).arguments())
                .containsExactly("7001, 7002");
    }

    @Test
    void a_permit_is_compared_by_anybody_else() {
        printed(Sort.PERMIT);
        say("8888", permit(1, Optional.of(NOW)));
        assertThat(comparing("9999")).isEmpty();
        say("9999", new Agreed(1, 1, "WB-1"));
        assertThat(comparing("7003")).containsExactly("paper.nothingWaits");
    }

    @Test
    void what_is_typed_in_is_kept_and_read_back_as_it_is() {
        var items = new Written.Items(List.of(line("7001")));
        for (Written written : List.of(items, new Written.Isolation(form(true)), written(Optional.of(NOW)))) {
            Transcribed said = written.as(4, 2, "WB-1", PICTURE);
            assertThat(Written.of(said)).isEqualTo(written);
            assertThat(said.form()).isEqualTo(4);
            assertThat(said.transcription()).isEqualTo(2);
            assertThat(said.vehicle()).isEqualTo("WB-1");
            assertThat(said.photograph()).isEqualTo(PICTURE);
        }
        assertThat(items.as(4, 2, "WB-1", PICTURE)).isInstanceOf(ItemsTranscribed.class);
        assertThat(Sort.ITEMS.blank()).isFalse();
        assertThat(Sort.ISOLATION.blank()).isTrue();
        assertThat(Sort.PERMIT.blank()).isTrue();
    }

    @Test
    void a_number_is_found_with_or_without_its_letter_and_nothing_else_is_one() {
        printed(Sort.PERMIT);
        for (String code : List.of("1", "F-1", "f-0001", " F-0001 ", "0001")) {
            assertThat(PaperForms.of(works).code(code)).as(code).isPresent();
        }
        for (String code : List.of("", "F-", "0", "G-1", "1a", "F1", "-1", "2", "12345678901")) {
            assertThat(PaperForms.of(works).code(code)).as(code).isEmpty();
        }
    }

    private void printed(Sort sort) {
        say("7005", new FormsPrinted(1, 1, sort, Optional.empty(), Optional.empty()));
    }

    private static IsolationTranscribed isolation(int transcription, boolean closed) {
        return new IsolationTranscribed(1, transcription, "WB-1", PICTURE, form(closed));
    }

    /** The isolator’s lock is the last; the other comes off before it, or hangs still. */
    private static IsolationForm form(boolean closed) {
        Instant at = PRINTED.plusSeconds(600);
        return new IsolationForm(
                "7001",
                at,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(
                        new Locked("7001", "L-1", "T-1", at, Optional.empty()),
                        new Locked("7002", "L-2", "T-2", at, Optional.of(at).filter(off -> closed))),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.of(new Signed("7002", at)),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(new Restored("7001", at, "L-1")));
    }

    private static PermitTranscribed permit(int transcription, Optional<Instant> closedAt) {
        return new PermitTranscribed(1, transcription, "WB-1", PICTURE, permitForm(closedAt));
    }

    private static Written written(Optional<Instant> closedAt) {
        return new Written.Permit(permitForm(closedAt));
    }

    private static PermitForm permitForm(Optional<Instant> closedAt) {
        return permitForm("7001", "7002", closedAt);
    }

    private static PermitForm permitForm(String issuer, String receiver, Optional<Instant> closedAt) {
        return new PermitForm(
                Work.HEIGHT,
                "roof",
                List.of(),
                List.of(),
                issuer,
                PRINTED.plusSeconds(60),
                receiver,
                Optional.of(PRINTED.plusSeconds(120)),
                NOW.plus(Duration.ofHours(1)),
                closedAt,
                closedAt);
    }

    private static PaperLine line(String doer) {
        return new PaperLine("frame", doer, NOW, Optional.empty(), List.of());
    }

    private List<String> typedIn(Written written) {
        return keys(against(written));
    }

    private List<Reason> against(Written written) {
        return new TranscribingRules(form(), PaperForms.of(works), "WB-1", written, NOW)
                .against(Optional.of(PICTURE), true, number -> true);
    }

    private List<String> comparing(String who) {
        return keys(TranscribingRules.againstComparing(form(), 1, who));
    }

    private PaperForm form() {
        return PaperForms.of(works).number(1).orElseThrow();
    }

    private State state() {
        return form().state();
    }

    private void say(String who, Saying saying) {
        works = works.and(
                new Entry(UUID.randomUUID(), Subject.works(), works.number() + 1, Moment.of(who, PRINTED), "", saying));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}

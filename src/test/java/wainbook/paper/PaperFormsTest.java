package wainbook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
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
import wainbook.paper.PaperSaying.ItemsTranscribed;
import wainbook.paper.PaperSaying.SentBack;
import wainbook.paper.PaperSaying.UseEnded;
import wainbook.station.paper.PaperLine;

/** Each number is accounted for, from the printer to the record or the bin. */
class PaperFormsTest {

    private static final Instant PRINTED = Instant.parse("2026-03-02T06:00:30Z");
    private static final EvidenceFile PICTURE = EvidenceFile.of(new byte[] {1}, "image/png");
    private static final EvidenceFile OTHER = EvidenceFile.of(new byte[] {2}, "image/png");

    private History works = History.empty(Subject.works());

    @Test
    void a_run_gets_numbers_that_follow_the_last_and_never_come_again() {
        say("7005", new FormsPrinted(1, 3, Sort.ISOLATION, Optional.empty(), Optional.empty()));
        assertThat(forms().next()).isEqualTo(4);
        say("7005", new FormSpoiled(3, "coffee"));
        say("7005", new FormsPrinted(4, 1, Sort.ITEMS, Optional.of("WB-1"), Optional.of(12L)));
        assertThat(forms().all()).extracting(PaperForm::code).containsExactly("F-0001", "F-0002", "F-0003", "F-0004");
        assertThat(forms().code("f-0003").orElseThrow().state()).isEqualTo(State.SPOILED);
        assertThat(forms().code("4").orElseThrow().vehicle()).contains("WB-1");
        assertThat(forms().code("F-0005")).isEmpty();
        assertThat(forms().code("F-0000")).isEmpty();
    }

    @Test
    void a_form_goes_from_blank_over_in_use_and_waiting_to_entered_and_back_once_if_it_was_not_the_same() {
        say("7005", new FormsPrinted(1, 1, Sort.ITEMS, Optional.of("WB-1"), Optional.of(12L)));
        assertThat(state()).isEqualTo(State.BLANK);
        say("7001", new FormInUse(1, "WB-1"));
        assertThat(state()).isEqualTo(State.IN_USE);
        say("7002", transcribed(1, PICTURE));
        assertThat(state()).isEqualTo(State.WAITING);
        say("7003", new SentBack(1, 1, "line 3 cannot be read"));
        assertThat(state()).isEqualTo(State.IN_USE);
        say("7002", transcribed(2, PICTURE));
        say("7003", new Agreed(1, 2, "WB-1"));
        assertThat(state()).isEqualTo(State.ENTERED);
        say("7001", new FormInUse(1, "WB-1"));
        assertThat(state()).as("somebody still works by it").isEqualTo(State.IN_USE);
        say("7003", new UseEnded(1, "WB-1", "looked"));
        assertThat(state()).isEqualTo(State.ENTERED);
    }

    @Test
    void what_is_written_over_needs_a_photograph_of_its_own_known_people_and_times_between_print_and_now() {
        say("7005", new FormsPrinted(1, 2, Sort.ITEMS, Optional.of("WB-1"), Optional.of(12L)));
        say("7002", transcribed(2, 1, OTHER));
        Instant now = PRINTED.plus(Duration.ofHours(1));
        assertThat(against("WB-1", now, Optional.of(PICTURE), line("7001", PRINTED.plusSeconds(60))))
                .isEmpty();
        assertThat(against("WB-1", now, Optional.of(PICTURE), line("7001", PRINTED.minusSeconds(30))))
                .as("the minute it was printed in")
                .isEmpty();
        assertThat(against("WB-1", now, Optional.of(PICTURE), line("7001", PRINTED.minusSeconds(31))))
                .containsExactly("paper.beforePrinted");
        assertThat(against("WB-1", now, Optional.of(PICTURE), line("7001", now.plusMillis(1))))
                .containsExactly("paper.inTheFuture");
        assertThat(against("WB-1", now, Optional.empty(), line("7001", now)))
                .containsExactly("paper.photographMissing");
        assertThat(against(
                        "WB-1",
                        now,
                        Optional.of(EvidenceFile.of(new byte[] {3}, "application/pdf")),
                        line("7001", now)))
                .containsExactly("paper.photographMissing");
        assertThat(against("WB-1", now, Optional.of(OTHER), line("7001", now))).containsExactly("paper.photographUsed");
        assertThat(against("WB-2", now, Optional.of(PICTURE), line("7001", now)))
                .containsExactly("paper.otherVehicle");
        assertThat(against("WB-1", now, Optional.of(PICTURE), line("9999", now)))
                .containsExactly("paper.personUnknown");
        assertThat(against("WB-1", now, Optional.of(PICTURE))).containsExactly("paper.noLines");
    }

    @Test
    void nobody_compares_what_they_wrote_over_themselves() {
        say("7005", new FormsPrinted(1, 1, Sort.ITEMS, Optional.of("WB-1"), Optional.of(12L)));
        assertThat(comparing(1, "7003")).containsExactly("paper.nothingWaits");
        say("7002", transcribed(1, PICTURE));
        assertThat(comparing(1, "7002")).containsExactly("paper.ownTranscription");
        assertThat(comparing(2, "7003")).containsExactly("paper.nothingWaits");
        assertThat(comparing(1, "7003")).isEmpty();
    }

    private List<String> comparing(int transcription, String who) {
        return keys(TranscribingRules.againstComparing(forms().number(1).orElseThrow(), transcription, who));
    }

    private List<String> against(String vehicle, Instant now, Optional<EvidenceFile> picture, PaperLine... lines) {
        return keys(new TranscribingRules(
                        forms().number(1).orElseThrow(), forms(), vehicle, new Written.Items(List.of(lines)), now)
                .against(picture, true, Set.of("7001", "7002", "7003")::contains));
    }

    private static PaperLine line(String doer, Instant at) {
        return new PaperLine("frame", doer, at, Optional.empty(), List.of());
    }

    private static ItemsTranscribed transcribed(int transcription, EvidenceFile picture) {
        return transcribed(1, transcription, picture);
    }

    private static ItemsTranscribed transcribed(int form, int transcription, EvidenceFile picture) {
        return new ItemsTranscribed(form, transcription, "WB-1", picture, List.of(line("7001", PRINTED)));
    }

    private State state() {
        return forms().number(1).orElseThrow().state();
    }

    private PaperForms forms() {
        return PaperForms.of(works);
    }

    private void say(String who, Saying saying) {
        works = works.and(new Entry(
                UUID.randomUUID(),
                Subject.works(),
                works.number() + 1,
                Moment.of(who, PRINTED.plusSeconds(works.number())),
                "",
                saying));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }
}

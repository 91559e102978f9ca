package wainbook.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;

/** What is said of the documents that a vehicle needs at handover. */
public sealed interface HandoverSaying extends Saying {

    /** How far a document has come. */
    enum State {
        APPLIED_FOR,
        IN_HAND,
        REFUSED,
        WAIVED
    }

    /**
     * The state of a document. A later note of the same requirement takes its place; both stay.
     *
     * @param document its name, as the set's revision had it
     * @param reference the number it goes by; empty where it has none
     * @param validUntil the last day on which it is valid
     * @param note why, where it was refused or waived; else whatever is worth knowing
     */
    @Kind("handover.documentNoted/1")
    record DocumentNoted(
            String requirement,
            String document,
            String set,
            int revision,
            State state,
            String reference,
            Optional<LocalDate> validUntil,
            Optional<EvidenceFile> file,
            String note)
            implements HandoverSaying {}

    /** What a rule said on the day of handover, and how its document stood. */
    record Judged(String requirement, String document, Answer answer, Standing standing) {}

    /** The set as it was judged when the vehicle was handed over: said with it, so that later rules change nothing. */
    @Kind("handover.setJudged/1")
    record SetJudged(String set, int revision, LocalDate on, List<Judged> documents) implements HandoverSaying {
        public SetJudged {
            documents = List.copyOf(documents);
        }
    }
}

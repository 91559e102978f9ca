package wainbook.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.station.StationSaying.Held;

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

    /**
     * The works' own text of a document that it issues takes the place of the one before.
     *
     * @param document its code
     * @param revision from 2, since the text that the program brings is the first
     * @param text by the rules of `handover.issue.Filling`
     */
    @Kind("handover.textReleased/1")
    record TextReleased(String document, int revision, String text) implements HandoverSaying {}

    /**
     * The works made a document from the record of the vehicle, and somebody appointed signed it.
     *
     * @param document its code
     * @param number counts the issues of this document for this vehicle, from 1; a later one takes the place of an earlier
     * @param revision of its text
     * @param file as it was signed: PDF
     * @param held the signer's appointment as it stood
     */
    @Kind("handover.issued/1")
    record Issued(String document, String title, int number, int revision, EvidenceFile file, Held held)
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

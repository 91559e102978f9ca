package wainbook.paper;

import java.util.List;
import java.util.Optional;
import wainbook.isolation.paper.IsolationForm;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.permit.PermitForm;
import wainbook.station.paper.PaperLine;

/** What is said of paper forms, in the stream of the works: each number is accounted for there. */
public sealed interface PaperSaying extends Saying {

    /** Said of one form. */
    interface OfForm {
        int form();
    }

    /** A filled-in form typed in by one person, with a photograph of it; a second compares the two. */
    sealed interface Transcribed extends PaperSaying, OfForm {
        int transcription();

        String vehicle();

        EvidenceFile photograph();
    }

    /**
     * Forms were printed, with numbers from {@code first} on.
     *
     * @param vehicle whose it is; absent on blank ones
     * @param seen the number of the vehicle’s stream at that moment: nothing after it is on the paper
     */
    @Kind("paper.formsPrinted/1")
    record FormsPrinted(int first, int count, Sort sort, Optional<String> vehicle, Optional<Long> seen)
            implements PaperSaying {}

    @Kind("paper.formSpoiled/1")
    record FormSpoiled(int form, String reason) implements PaperSaying, OfForm {}

    @Kind("paper.formInUse/1")
    record FormInUse(int form, String vehicle) implements PaperSaying, OfForm {}

    /** It is not in use there, or not any more, and there is nothing to type in. */
    @Kind("paper.useEnded/1")
    record UseEnded(int form, String vehicle, String reason) implements PaperSaying, OfForm {}

    @Kind("paper.itemsTranscribed/1")
    record ItemsTranscribed(int form, int transcription, String vehicle, EvidenceFile photograph, List<PaperLine> lines)
            implements Transcribed {
        public ItemsTranscribed {
            lines = List.copyOf(lines);
        }
    }

    @Kind("paper.isolationTranscribed/1")
    record IsolationTranscribed(
            int form, int transcription, String vehicle, EvidenceFile photograph, IsolationForm written)
            implements Transcribed {}

    @Kind("paper.permitTranscribed/1")
    record PermitTranscribed(int form, int transcription, String vehicle, EvidenceFile photograph, PermitForm written)
            implements Transcribed {}

    /** Compared with the photograph and found the same; what it says stands at the vehicle from then on. */
    @Kind("paper.agreed/1")
    record Agreed(int form, int transcription, String vehicle) implements PaperSaying, OfForm {}

    /** Compared with the photograph and not the same, or not to be read. */
    @Kind("paper.sentBack/1")
    record SentBack(int form, int transcription, String reason) implements PaperSaying, OfForm {}
}

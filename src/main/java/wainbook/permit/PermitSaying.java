package wainbook.permit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;

/** What is said of permits, in the stream of the vehicle, or of the works where none is worked on. */
public sealed interface PermitSaying extends Saying {

    /**
     * A precaution that was seen to.
     *
     * @param naming number of the gear or person, or the words that go with it
     */
    record Ticked(Precaution precaution, Optional<String> naming) {}

    /** @param place where the work is, if it is not on a vehicle */
    @Kind("permit.issued/1")
    record PermitIssued(
            int permit,
            Work sort,
            Optional<String> place,
            String work,
            List<Trait> circumstances,
            List<Ticked> precautions,
            String receiver,
            Instant validUntil)
            implements PermitSaying {
        public PermitIssued {
            circumstances = List.copyOf(circumstances);
            precautions = List.copyOf(precautions);
        }
    }

    /** The receiver has read it and takes it on. */
    @Kind("permit.received/1")
    record PermitReceived(int permit) implements PermitSaying {}

    @Kind("permit.stopped/1")
    record WorkStopped(int permit, Optional<String> words) implements PermitSaying {}

    /** @param words why it is safe to say so, if somebody else than the receiver hands back */
    @Kind("permit.handedBack/1")
    record PermitHandedBack(int permit, Optional<String> words) implements PermitSaying {}

    /**
     * A permit as a paper form was filled in, compared with its photograph by a second person.
     *
     * @param form number of the paper
     * @param remarks keys of the rules that it does not keep
     */
    @Kind("permit.onPaper/1")
    record OnPaper(
            String form,
            EvidenceFile photograph,
            PermitForm written,
            List<String> remarks,
            String transcribedBy,
            String comparedBy)
            implements PermitSaying {
        public OnPaper {
            remarks = List.copyOf(remarks);
        }
    }

    /** @param words what the last look found, and why somebody else than the issuer closes */
    @Kind("permit.closed/1")
    record PermitClosed(int permit, Optional<String> words) implements PermitSaying {}
}

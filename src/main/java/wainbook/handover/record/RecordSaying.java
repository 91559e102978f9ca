package wainbook.handover.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;

/** What is said when a vehicle is given to its operator. All but {@link ListWorded} lies in the vehicle's stream. */
public sealed interface RecordSaying extends Saying {

    /**
     * Somebody who is not of the works.
     *
     * @param token by which this order's record calls them: O-1, O-2 …
     * @param nameHash of name and firm with their salt; both lie outside the ledger
     */
    record Outsider(String token, String nameHash) {}

    /** @param count at least 1 */
    record Thing(String thing, int count) {}

    /** What of the record can be withdrawn one by one. */
    enum Sort {
        PICTURE,
        SNAG,
        INSTRUCTION
    }

    /** @param picture counts from 1 */
    @Kind("handover.conditionPictured/1")
    record ConditionPictured(int picture, String place, String remark, EvidenceFile photograph)
            implements RecordSaying {}

    /**
     * @param chargePercent of the packs, as the vehicle shows it
     * @param bay where the works gives it over
     */
    @Kind("handover.stateRead/1")
    record StateRead(int odometerKm, int chargePercent, String bay) implements RecordSaying {}

    /** Takes the place of an earlier list. Empty says that nothing is given with the vehicle. */
    @Kind("handover.thingsListed/1")
    record ThingsListed(List<Thing> things) implements RecordSaying {
        public ThingsListed {
            things = List.copyOf(things);
        }
    }

    /**
     * @param with whom of the operator it was agreed with
     * @param owner who does it for the works; empty where the operator does it
     */
    @Kind("handover.snagAgreed/1")
    record SnagAgreed(
            int snag,
            String defect,
            String place,
            Outsider with,
            Optional<String> owner,
            String remedy,
            LocalDate dueOn)
            implements RecordSaying {}

    @Kind("handover.snagClosed/1")
    record SnagClosed(int snag, String done, Optional<EvidenceFile> photograph) implements RecordSaying {}

    /**
     * @param drivers who were instructed to drive and charge it
     * @param workshop who were instructed to look after it
     * @param by number of the person of the works who instructed
     */
    @Kind("handover.instructed/1")
    record Instructed(
            int instruction,
            List<Outsider> drivers,
            List<Outsider> workshop,
            String by,
            List<String> topics,
            LocalDate on)
            implements RecordSaying {
        public Instructed {
            drivers = List.copyOf(drivers);
            workshop = List.copyOf(workshop);
            topics = List.copyOf(topics);
        }
    }

    /** Nobody is instructed at handover. A later instruction takes its place. */
    @Kind("handover.instructionOmitted/1")
    record InstructionOmitted(String reason) implements RecordSaying {}

    /** Takes the place of an earlier one. */
    @Kind("handover.warrantyBegun/1")
    record WarrantyBegun(LocalDate from, int odometerKm, String covers) implements RecordSaying {}

    /** A photograph, snag or instruction is no part of the record any more: it was a slip. */
    @Kind("handover.partWithdrawn/1")
    record PartWithdrawn(Sort sort, int piece, String reason) implements RecordSaying {}

    /** How a receipt was signed. */
    enum Manner {
        DRAWN,
        TYPED
    }

    /** One part of what a receiver was shown, by its fingerprint, so that what changed since can be said. */
    record Part(Shown.Part part, String fingerprint) {}

    /**
     * The operator's person received what was shown.
     *
     * @param shown what was shown, as text without names; its fingerprint is what the receipt stands for
     * @param receiver their name and firm lie outside the ledger
     * @param role at the operator
     * @param signature the drawing; empty where the name was typed instead
     */
    @Kind("handover.receiptSigned/1")
    record ReceiptSigned(
            int receipt,
            EvidenceFile shown,
            List<Part> parts,
            Outsider receiver,
            String role,
            Manner manner,
            Optional<EvidenceFile> signature)
            implements RecordSaying {
        public ReceiptSigned {
            parts = List.copyOf(parts);
        }
    }

    /** Why nobody of the operator signed. */
    enum Absence {
        REFUSED,
        NOT_PRESENT
    }

    /** @param witness the second person of the works, who confirmed it by their own password */
    @Kind("handover.receiptMissing/1")
    record ReceiptMissing(
            int receipt, EvidenceFile shown, List<Part> parts, Absence absence, String reason, String witness)
            implements RecordSaying {
        public ReceiptMissing {
            parts = List.copyOf(parts);
        }
    }

    /** A list that the works words for itself. */
    enum Wordlist {
        THINGS,
        TOPICS
    }

    /** In the stream of the works; takes the place of the list before. */
    @Kind("handover.listWorded/1")
    record ListWorded(Wordlist wordlist, List<String> words) implements RecordSaying {
        public ListWorded {
            words = List.copyOf(words);
        }
    }
}

package wainbook.book;

import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.evidence.EvidenceFile;

/** What is said of a vehicle's book. */
public sealed interface BookSaying extends Saying {

    /**
     * The handover set is made once and kept. What changes later goes into a further volume.
     *
     * @param volume from 1
     * @param set the files as one ZIP
     * @param merged the book and every document as one PDF
     * @param upTo number of the last entry that it knows
     * @param head hash of that entry
     */
    @Kind("book.setFrozen/1")
    record SetFrozen(int volume, EvidenceFile set, EvidenceFile merged, long upTo, String head) implements BookSaying {}
}

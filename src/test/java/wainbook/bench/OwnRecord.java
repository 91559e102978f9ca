package wainbook.bench;

import io.quarkus.arc.Arc;
import java.util.List;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.stream.StoredStream;
import wainbook.ledger.stream.StoredStreams;

/**
 * A vehicle's whole record, in the program's hands and in bytes.
 *
 * @param texts the hashed texts, oldest first
 * @param end the hash of the last
 */
record OwnRecord(Subject subject, List<Entry> entries, List<String> texts, String end) {

    OwnRecord {
        entries = List.copyOf(entries);
        texts = List.copyOf(texts);
    }

    static OwnRecord of(String number) {
        Subject subject = Subject.workOrder(number);
        History history = Arc.container().instance(Ledger.class).get().history(subject);
        StoredStream stored =
                Arc.container().instance(StoredStreams.class).get().of(subject).orElseThrow();
        return new OwnRecord(subject, history.entries(), stored.lines(), stored.hash());
    }

    /** What the first entry follows. */
    String beginning() {
        return "0".repeat(64);
    }

    /** The history as it is when nothing was asked of it yet. */
    History unasked() {
        return new History(subject, entries);
    }
}

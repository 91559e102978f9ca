package wainbook.handover.issue;

import java.util.Optional;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** What was issued of one document for one vehicle. */
public record Issues(int count, Optional<Entry> last) {

    /** By which an issue is called. */
    public static String number(String order, String document, int issue) {
        return order + "/" + document + "/" + issue;
    }

    public static Issues of(History history, String document) {
        var issued = history.saying(Issued.class)
                .filter(entry -> ((Issued) entry.saying()).document().equals(document))
                .toList();
        return new Issues(
                issued.size(), issued.isEmpty() ? Optional.empty() : Optional.of(issued.get(issued.size() - 1)));
    }
}

package wainbook.works.instruments;

import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.works.WorksSaying.Issued;
import wainbook.works.WorksSaying.Returned;

/** An instrument that is out of the tool store: who has it, where, since when. */
public record Issue(String to, Optional<String> place, Instant since) {

    /** Empty while it lies in the store. */
    public static Optional<Issue> of(History history) {
        Issue out = null;
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof Issued said) {
                out = new Issue(said.to(), said.place(), entry.moment().at());
            } else if (entry.saying() instanceof Returned) {
                out = null;
            }
        }
        return Optional.ofNullable(out);
    }
}

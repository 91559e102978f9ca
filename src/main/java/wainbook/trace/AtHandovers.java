package wainbook.trace;

import java.util.Set;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.issue.Issues;
import wainbook.ledger.Saying;
import wainbook.trace.Mention.Sort;

/** What the documents of a vehicle are called by. */
final class AtHandovers {

    private AtHandovers() {}

    /** One that the works issued by its number and the revision of its text; any by the number it was noted with. */
    static void add(String order, Saying saying, Set<Mention> named) {
        if (saying instanceof Issued said) {
            named.add(Mention.of(Sort.DOCUMENT, Issues.number(order, said.document(), said.number())));
            named.add(Mention.of(Sort.DOCUMENT_REVISION, said.document() + "/" + said.revision()));
        } else if (saying instanceof DocumentNoted said) {
            named.add(Mention.of(Sort.DOCUMENT, said.reference()));
        }
    }
}

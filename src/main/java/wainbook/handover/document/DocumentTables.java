package wainbook.handover.document;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.SetJudged;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Standing;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;

/** Documents after handover, as the list of open matters finds them. */
@ApplicationScoped
class DocumentTables implements Projection {

    @Override
    public void take(Entry entry) {
        String order = entry.subject().code();
        if (entry.saying() instanceof SetJudged set) {
            set.documents().stream()
                    .filter(judged -> judged.standing() != Standing.NOT_NEEDED)
                    .forEach(judged -> {
                        var row = new DocumentRow();
                        row.id = DocumentRow.id(order, judged.requirement());
                        row.workOrder = order;
                        row.isOpen = judged.standing().isOpen();
                        row.persist();
                    });
        } else if (entry.saying() instanceof DocumentNoted noted) {
            DocumentRow.<DocumentRow>findByIdOptional(DocumentRow.id(order, noted.requirement()))
                    .ifPresent(row -> row.isOpen = noted.state() != State.IN_HAND && noted.state() != State.WAIVED);
        }
    }

    @Override
    public void forget() {
        DocumentRow.deleteAll();
    }
}

package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;

/**
 * What was in hand of a document when the vehicle was handed over before. It fills a form in; whether the paper still holds
 * after the new work is for a clerk to read, and nobody else notes it.
 */
@ApplicationScoped
public class FromEarlier {

    /** A document as it was noted under the vehicle’s former order. */
    public record Former(String order, DocumentNoted noted) {}

    private final Ledger ledger;

    FromEarlier(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Empty for a vehicle that did not come back, and for a document that was not in hand then. */
    public Optional<Former> of(History history, String requirement) {
        return WorkOrder.of(history)
                .flatMap(WorkOrder::earlierOrder)
                .flatMap(order -> ledger.history(Subject.workOrder(order))
                        .saying(DocumentNoted.class)
                        .map(entry -> (DocumentNoted) entry.saying())
                        .filter(said -> said.requirement().equals(requirement))
                        .reduce((former, latter) -> latter)
                        .filter(said -> said.state() == State.IN_HAND)
                        .map(said -> new Former(order, said)));
    }
}

package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentRow;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.works.Role;

/** Documents that are to follow a vehicle after it was handed over. */
@ApplicationScoped
class DocumentMatters implements Matters {

    private final Ledger ledger;
    private final HandoverLook look;

    DocumentMatters(Ledger ledger, HandoverLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return DocumentRow.ordersWithOpen().stream()
                .map(order -> ledger.history(Subject.workOrder(order)))
                .flatMap(history -> WorkOrder.of(history).stream().flatMap(order -> of(history, order, now).stream()))
                .toList();
    }

    private List<OpenMatter> of(History history, WorkOrder order, Instant now) {
        Instant handedOver = history.saying(HandedOver.class)
                .findFirst()
                .map(entry -> entry.moment().at())
                .orElse(now);
        return look.documents(history, order, now).stream()
                .flatMap(set -> set.following().stream())
                .map(document -> matter(order, document, handedOver, now))
                .toList();
    }

    private OpenMatter matter(WorkOrder order, Document document, Instant handedOver, Instant now) {
        return new OpenMatter(
                Sort.DOCUMENT,
                order.number(),
                Words.of("handover.documentMatter", document.id()),
                Optional.empty(),
                document.rule().document() + ", " + document.standing().word(),
                handedOver,
                List.of(owner(document)),
                document.followsBy().map(day -> Due.on(day, look.today(now))).orElse(Due.open()),
                "",
                "/handover/" + order.number());
    }

    /** Whose duty it is by the rule; for the works its handover clerk sees to it. */
    private static Owner owner(Document document) {
        return switch (document.rule().duty()) {
            case WORKS -> Owner.of(Role.HANDOVER_CLERK);
            case OPERATOR, KEEPER ->
                new Owner(
                        document.rule().duty().word(),
                        Words.of("handover.owner." + document.rule().duty().name()));
        };
    }
}

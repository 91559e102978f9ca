package wainbook.handover;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.HandoverSaying.Judged;
import wainbook.handover.HandoverSaying.SetJudged;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;

/** Hands a finished vehicle over, with its documents. */
@ApplicationScoped
public class HandingOver {

    private static final int LONGEST = 200;

    /**
     * What is asked.
     *
     * @param receivedBy who receives it, by role or by the number of the receipt
     * @param seen the number of the stream when the clerk looked
     */
    public record ToHandOver(UUID id, String order, String receivedBy, Optional<Long> seen) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HandedOver.class;
        }
    }

    private final Ledger ledger;
    private final HandoverLook look;

    HandingOver(Ledger ledger, HandoverLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    public Outcome<Entry> handOver(ToHandOver asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> WorkOrder.of(reading.of(subject))
                        .map(order -> look.rules(reading.of(subject), order, reading.moment()))
                        .map(rules -> decide(asked, rules))
                        .orElseGet(
                                () -> Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()))));
    }

    private static Decision decide(ToHandOver asked, HandoverRules rules) {
        List<Reason> against = new ArrayList<>(rules.against());
        if (asked.receivedBy().isBlank() || asked.receivedBy().length() > LONGEST) {
            against.add(Reason.of("handover.receiverMissing", Reason.WORKS_RULE).liftedAt("#receivedBy"));
        }
        if (!against.isEmpty()) {
            return Decision.refuse(against);
        }
        Subject order = Subject.workOrder(asked.order());
        DocumentSet set = rules.documents().orElseThrow();
        List<String> inHand =
                set.standing(Standing.IN_HAND).stream().map(Document::id).toList();
        return Decision.say(order, new HandedOver(asked.receivedBy(), inHand)).andSay(order, judged(set));
    }

    private static SetJudged judged(DocumentSet set) {
        return new SetJudged(
                set.set(),
                set.revision(),
                set.handover(),
                set.documents().stream()
                        .map(document -> new Judged(
                                document.id(),
                                document.rule().document(),
                                document.requirement().answer(),
                                document.standing()))
                        .toList());
    }
}

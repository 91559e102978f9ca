package wainbook.line.awaited;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.PartCame;
import wainbook.order.WorkOrder;

/** Notes that an awaited part came. */
@ApplicationScoped
public class Coming {

    /** @param remark may be blank */
    public record ToNote(UUID id, String order, int number, String remark) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PartCame.class;
        }
    }

    private final Ledger ledger;

    Coming(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> note(ToNote asked, Actor actor) {
        return ledger.write(asked, actor, reading -> decide(asked, reading));
    }

    private static Decision decide(ToNote asked, Reading reading) {
        Subject subject = Subject.workOrder(asked.order());
        Optional<WorkOrder> order = WorkOrder.of(reading.of(subject));
        if (order.isEmpty()) {
            return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        List<Reason> against =
                Against.coming(order.get(), AwaitedParts.of(reading.of(subject)).of(asked.number()), asked.remark());
        return against.isEmpty()
                ? Decision.say(subject, new PartCame(asked.number(), asked.remark()))
                : Decision.refuse(against);
    }
}

package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.RecordSaying.PartWithdrawn;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;

/** Takes a photograph, a snag or an instruction out of the record that was a slip; the entry stays on the ledger. */
@ApplicationScoped
public class Withdrawing {

    /** @param piece its number */
    public record ToWithdraw(UUID id, String order, Sort sort, int piece, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PartWithdrawn.class;
        }
    }

    private final AtBay bays;

    Withdrawing(AtBay bays) {
        this.bays = bays;
    }

    public Outcome<Entry> withdraw(ToWithdraw asked, Actor actor) {
        return bays.write(asked, actor, bay -> {
            if (!bay.record().stands(asked.sort(), asked.piece())) {
                return Decision.refuse(Reason.of("handover.recordNoPiece", Reason.WORKS_RULE, asked.piece())
                        .liftedAt(bay.rules().path()));
            }
            return bay.say(
                    Typed.words(asked.reason(), "withdrawReason").stream().toList(),
                    () -> new PartWithdrawn(asked.sort(), asked.piece(), asked.reason()));
        });
    }
}

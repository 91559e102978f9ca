package wainbook.matter;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
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
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.WorkOrder;

/** Reports that something is wrong: opens a nonconformity on request. Anybody at the vehicle may. */
@ApplicationScoped
public class Reporting {

    /** What is asked; {@code item} is {@code sheet/item} where it is about one. */
    public record ToReport(UUID id, String order, Optional<String> item, String what) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return NonconformityOpened.class;
        }
    }

    private final Ledger ledger;

    Reporting(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> report(ToReport asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            Optional<WorkOrder> known = WorkOrder.of(reading.of(order));
            var against = new ArrayList<Reason>();
            if (known.isEmpty()) {
                against.add(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            if (asked.what().isBlank() || asked.what().length() > 2000) {
                against.add(Reason.of("matter.whatMissing", Reason.WORKS_RULE).liftedAt("#what"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            order,
                            new NonconformityOpened(
                                    Nonconformities.of(reading.of(order)).next(),
                                    known.orElseThrow().stage().orElse("–"),
                                    asked.item(),
                                    Cause.REPORTED,
                                    asked.what(),
                                    Optional.empty()))
                    : Decision.refuse(against);
        });
    }
}

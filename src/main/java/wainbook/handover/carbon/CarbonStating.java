package wainbook.handover.carbon;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSaying.Used;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;

/** States what a conversion saves, with the factors it used. */
@ApplicationScoped
public class CarbonStating {

    /** @param year of the factors */
    public record ToState(UUID id, String order, Basis basis, int year) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return CarbonStated.class;
        }
    }

    private final Ledger ledger;

    CarbonStating(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> state(ToState asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            if (WorkOrder.of(history).isEmpty()) {
                return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            List<Reason> against = CarbonRules.against(asked.basis(), asked.year(), CarbonSets.loaded());
            return against.isEmpty() ? Decision.say(subject, stated(asked, history)) : Decision.refuse(against);
        });
    }

    private static CarbonStated stated(ToState asked, History history) {
        CarbonSet set = CarbonSets.loaded().of(asked.year()).orElseThrow();
        List<Used> used = Arrays.stream(Factor.values())
                .map(factor -> set.used(factor).orElseThrow())
                .toList();
        return new CarbonStated(
                last(history).map(CarbonStated::statement).orElse(0) + 1,
                asked.basis(),
                asked.year(),
                set.set(),
                used,
                new CarbonWorking(asked.basis(), used).saved());
    }

    /** The statement that stands. */
    public static Optional<CarbonStated> last(History history) {
        return history.last(CarbonStated.class);
    }
}

package wainbook.order.calibration;

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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.CalibrationSaying.CalibrationAsked;
import wainbook.order.promise.Promise;

/** Puts on record how the vehicle of an order shall drive. */
@ApplicationScoped
public class Asking {

    /** @param judged the last entry about it that was seen, 0 for none */
    public record ToAsk(UUID id, String order, List<Wish> wishes, Optional<SameTime> sameTime, long judged)
            implements Asked {
        public ToAsk {
            wishes = List.copyOf(wishes);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return CalibrationAsked.class;
        }
    }

    private final Ledger ledger;

    Asking(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> ask(ToAsk asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            List<Reason> against = against(history, asked);
            return against.isEmpty()
                    ? Decision.say(history.subject(), new CalibrationAsked(asked.wishes(), asked.sameTime()))
                    : Decision.refuse(against);
        });
    }

    private static List<Reason> against(History history, ToAsk asked) {
        var order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return List.of(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        var against = new ArrayList<Reason>(Ordering.closed(order));
        Wanted wanted = Wanted.of(history);
        if (wanted.seen() != asked.judged()) {
            against.add(Reason.of("order.calibrationStale", Reason.WORKS_RULE)
                    .liftedAt("/orders/" + asked.order() + "/calibration"));
        }
        if (asked.wishes().isEmpty() && wanted.wishes().isEmpty()) {
            against.add(Reason.of("order.nothingAsked", Reason.WORKS_RULE).liftedAt("#ROAD_SPEED_LIMITValue"));
        }
        against.addAll(WishRules.against(asked.wishes(), asked.sameTime(), Promise.of(history)));
        return against;
    }
}

package wainbook.station.help;

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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpAnswered;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.station.StationSaying.HelpResolved;

/**
 * Calls help to a vehicle. Anybody may, wherever the vehicle stands; a call is refused for nothing but that there is no such
 * work order, and whoever answers or settles it a second time is not sent away either.
 */
@ApplicationScoped
public class Calling {

    /** What is asked when help is called. */
    public record ToCall(UUID id, String order, Help help, Optional<String> words, boolean workStands)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HelpCalled.class;
        }
    }

    /** What is asked by somebody who comes. */
    public record ToAnswer(UUID id, String order, int call) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HelpAnswered.class;
        }
    }

    /** What is asked when it is settled. */
    public record ToResolve(UUID id, String order, int call, Optional<String> words) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HelpResolved.class;
        }
    }

    private final Ledger ledger;

    Calling(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> call(ToCall asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            Optional<WorkOrder> order = WorkOrder.of(history);
            return order.isEmpty()
                    ? Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()))
                    : Decision.say(
                            subject,
                            new HelpCalled(
                                    1 + HelpCall.of(history).size(),
                                    asked.help(),
                                    order.get().stage(),
                                    order.get().at().map(Place::place),
                                    asked.words(),
                                    asked.workStands()));
        });
    }

    public Outcome<Entry> answer(ToAnswer asked, Actor actor) {
        return about(asked, asked.order(), asked.call(), actor, new HelpAnswered(asked.call()));
    }

    public Outcome<Entry> resolve(ToResolve asked, Actor actor) {
        return about(asked, asked.order(), asked.call(), actor, new HelpResolved(asked.call(), asked.words()));
    }

    private Outcome<Entry> about(Asked asked, String order, int call, Actor actor, StationSaying saying) {
        Subject subject = Subject.workOrder(order);
        return ledger.write(
                asked,
                actor,
                reading -> HelpCall.of(reading.of(subject), call).isEmpty()
                        ? Decision.refuse(Reason.of("station.callNotFound", Reason.WORKS_RULE, call, order))
                        : Decision.say(subject, saying));
    }
}

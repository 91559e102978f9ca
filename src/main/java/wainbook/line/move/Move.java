package wainbook.line.move;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.gate.SignOff;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying.VehicleMoved;
import wainbook.isolation.State;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.StandingHolds;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.safety.stop.Stops;
import wainbook.station.StationSaying.Bar;
import wainbook.station.deferral.BarredUntilDone;
import wainbook.station.work.Workplace;

/** Moves a vehicle. */
@ApplicationScoped
public class Move {

    /**
     * What is asked. No component is called as one of the entry's, which holds whole places: the same request that comes
     * again would seem another.
     *
     * @param destination the station, bay or yard
     * @param backTo the stage to go back to, where it is one
     * @param seen the number of the stream when the mover looked
     */
    public record ToMove(
            UUID id,
            String order,
            Direction direction,
            String destination,
            Optional<String> backTo,
            List<String> confirmed,
            Optional<String> reason,
            Optional<Long> seen)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Moved.class;
        }
    }

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final BarredUntilDone bars;
    private final StandingHolds holds;

    Move(Ledger ledger, Releases releases, Workplace workplace, BarredUntilDone bars, StandingHolds holds) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bars = bars;
        this.holds = holds;
    }

    public Outcome<Entry> move(ToMove asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            Optional<WorkOrder> order = WorkOrder.of(history);
            if (order.isEmpty()) {
                return Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            MoveRules rules =
                    rules(history, order.get(), asked, reading.moment().at());
            List<Reason> against = rules.against();
            return against.isEmpty() ? moved(subject, rules) : Decision.refuse(against);
        });
    }

    /** Everything that stands against a move; empty when it can be made. Asked before a page is drawn. */
    public List<Reason> against(History history, WorkOrder order, ToMove asked) {
        return rules(history, order, asked, Instant.MAX).against();
    }

    private MoveRules rules(History history, WorkOrder order, ToMove asked, Instant at) {
        Optional<String> stage = Destination.stage(order, asked);
        Optional<Released> sheet = stage.flatMap(
                        code -> releases.leg(order.ordered().route(), code))
                .map(Route.Leg::checkSheet)
                .flatMap(releases::sheetInForce);
        return new MoveRules(
                history,
                order,
                asked,
                stage,
                sheet,
                releases.station(asked.destination()),
                WorkOrderRow.occupant(asked.destination(), at)
                        .map(row -> row.number)
                        .filter(number -> !number.equals(order.number())),
                order.stage().flatMap(current -> workplace.record(history, order, current)),
                bars.barring(Bar.DRIVING, history),
                Stops.of(ledger.history(Subject.works())).at(asked.destination()),
                holds.against(order, OrderSaying.Stops.MOVE));
    }

    /** An isolation, a live-work permit or a declaration that stands hears of the move, and judges what it leaves of them. */
    private static Decision moved(Subject order, MoveRules rules) {
        Moved moved = moved(rules);
        Decision decision = Decision.say(order, moved);
        Isolation isolation = Isolation.of(rules.history());
        return isolation.state() == State.LIVE && isolation.live().isEmpty()
                ? decision
                : decision.andSay(
                        order,
                        new VehicleMoved(
                                moved.from().place(), Optional.of(moved.to().place())));
    }

    private static Moved moved(MoveRules rules) {
        Optional<Binding> binding = rules.stage()
                .filter(code -> !rules.order().bindings().containsKey(code))
                .flatMap(code -> rules.sheet()
                        .map(released -> new Binding(code, released.sheet().code(), released.revision())));
        return new Moved(
                rules.asked().direction(),
                rules.order().at().orElse(new Place(Optional.empty(), SignOff.YARD)),
                new Place(rules.stage(), rules.asked().destination()),
                binding,
                rules.asked().confirmed(),
                rules.asked().reason());
    }
}

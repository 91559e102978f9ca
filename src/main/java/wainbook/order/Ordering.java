package wainbook.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
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
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.Ordered;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.VehicleFacts;

/** Makes a work order. It may stand without a donor. */
@ApplicationScoped
public class Ordering {

    /** What is asked; {@code facts} are what is known of the vehicle to be. */
    public record ToOrder(
            UUID id,
            String number,
            String operator,
            String variant,
            String route,
            LocalDate promisedOn,
            List<FactStated> facts)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(number));
        }

        @Override
        public Class<? extends Saying> says() {
            return Ordered.class;
        }
    }

    /** What is asked to state one more fact, or to state it anew. */
    public record ToState(UUID id, String order, String fact, String stated) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return FactStated.class;
        }
    }

    private final Ledger ledger;
    private final Releases releases;

    Ordering(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    public Outcome<Entry> order(ToOrder asked, Actor actor) {
        Subject order = Subject.workOrder(asked.number());
        return ledger.write(asked, actor, reading -> {
            Optional<Route> route = releases.route(asked.route());
            var against = new ArrayList<Reason>();
            if (!reading.of(order).isEmpty()) {
                against.add(Reason.of("order.numberTaken", Reason.WORKS_RULE, asked.number())
                        .liftedAt("#number"));
            }
            if (route.isEmpty()) {
                against.add(Reason.of("order.routeUnknown", Reason.WORKS_RULE, asked.route())
                        .liftedAt("#route"));
            }
            if (asked.operator().isBlank()) {
                against.add(
                        Reason.of("order.operatorMissing", Reason.WORKS_RULE).liftedAt("#operator"));
            }
            asked.facts().forEach(fact -> misstated(fact.fact(), fact.stated()).ifPresent(against::add));
            return against.isEmpty() ? say(order, route.get(), asked) : Decision.refuse(against);
        });
    }

    private static Decision say(Subject order, Route route, ToOrder asked) {
        Decision decision = Decision.say(
                order,
                new Ordered(
                        asked.operator(),
                        route.vehicleKind(),
                        asked.variant(),
                        route.code(),
                        route.legs().stream().map(Route.Leg::stage).toList(),
                        asked.promisedOn()));
        decision = decision.andSay(order, new FactStated("vehicle_kind", route.vehicleKind()))
                .andSay(order, new FactStated("variant", asked.variant()));
        for (FactStated fact : asked.facts()) {
            decision = decision.andSay(order, fact);
        }
        return decision;
    }

    public Outcome<Entry> state(ToState asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (reading.of(order).isEmpty()) {
                against.add(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            against.addAll(closed(WorkOrder.of(reading.of(order))));
            misstated(asked.fact(), asked.stated()).ifPresent(against::add);
            return against.isEmpty()
                    ? Decision.say(order, new FactStated(asked.fact(), asked.stated()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against stating anything of this vehicle: its papers were given by the facts as they stood. */
    public static List<Reason> closed(Optional<WorkOrder> order) {
        return order
                .filter(known -> known.phase() == WorkOrder.Phase.HANDED_OVER)
                .map(known -> Reason.of("order.factsClosed", Reason.WORKS_RULE, known.number())
                        .liftedAt("/orders/" + known.number()))
                .stream()
                .toList();
    }

    private static Optional<Reason> misstated(String fact, String stated) {
        return VehicleFacts.states(fact, stated)
                ? Optional.empty()
                : Optional.of(Reason.of(
                        "order.factMisstated",
                        Reason.WORKS_RULE,
                        fact,
                        stated,
                        Optional.ofNullable(VehicleFacts.VOCABULARY.types().get(fact))
                                .map(type -> type.word())
                                .orElse("–")));
    }
}

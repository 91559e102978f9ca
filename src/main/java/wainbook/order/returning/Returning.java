package wainbook.order.returning;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Reading;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.OrderSaying.ReturnedUnder;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.process.Route;

/** Makes a new order for a vehicle that was handed over. Both records say so, each with the other’s number. */
@ApplicationScoped
public class Returning {

    /**
     * What is asked.
     *
     * @param number of the new order
     * @param earlier order under which the vehicle was handed over last
     * @param operator who runs it now
     */
    public record ToReturn(
            UUID id, String number, String earlier, String route, String operator, LocalDate promisedOn, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(number), Subject.workOrder(earlier));
        }

        @Override
        public Class<? extends Saying> says() {
            return Ordered.class;
        }
    }

    private final Ledger ledger;
    private final Releases releases;
    private final List<BroughtAlong> brought;

    Returning(Ledger ledger, Releases releases, @All List<BroughtAlong> brought) {
        this.ledger = ledger;
        this.releases = releases;
        this.brought = brought;
    }

    /** What stands against a new order for this vehicle, whatever it asks. */
    public List<Reason> against(WorkOrder earlier) {
        return ReturnRules.against(earlier);
    }

    /** The routes by which a vehicle of this kind can come back. */
    public List<Route> routes(WorkOrder earlier) {
        return releases.routes().stream()
                .filter(route -> route.vehicleKind().equals(earlier.ordered().vehicleKind()))
                .filter(route -> releases.bare(route).isEmpty())
                .toList();
    }

    public Outcome<Entry> order(ToReturn asked, Actor actor) {
        return ledger.write(
                asked,
                actor,
                reading -> WorkOrder.of(reading.of(Subject.workOrder(asked.earlier())))
                        .map(earlier -> decide(asked, earlier, reading))
                        .orElseGet(() ->
                                Decision.refuse(Reason.of("order.notFound", Reason.WORKS_RULE, asked.earlier()))));
    }

    private Decision decide(ToReturn asked, WorkOrder earlier, Reading reading) {
        Optional<Route> route = releases.route(asked.route());
        boolean taken = !reading.of(Subject.workOrder(asked.number())).isEmpty();
        List<Reason> against = ReturnRules.against(asked, earlier, route, route.flatMap(releases::bare), taken);
        return against.isEmpty()
                ? say(asked, earlier, route.orElseThrow(), reading.of(Subject.workOrder(asked.earlier())))
                : Decision.refuse(against);
    }

    private Decision say(ToReturn asked, WorkOrder earlier, Route route, History record) {
        Subject order = Subject.workOrder(asked.number());
        Ordered ordered = new Ordered(
                asked.operator().strip(),
                route.vehicleKind(),
                earlier.ordered().variant(),
                route.code(),
                route.legs().stream().map(Route.Leg::stage).toList(),
                asked.promisedOn());
        // The former record lets go of what is unique before the new one takes hold of it.
        Decision decision = Decision.say(order, ordered)
                .andSay(Subject.workOrder(asked.earlier()), new ReturnedUnder(asked.number()))
                .andSay(order, returned(asked, earlier.donor().orElseThrow(), record));
        for (Map.Entry<String, String> fact : new TreeMap<>(earlier.facts()).entrySet()) {
            decision = decision.andSay(order, new FactStated(fact.getKey(), fact.getValue()));
        }
        for (BroughtAlong room : brought) {
            for (Saying saying : room.of(record)) {
                decision = decision.andSay(order, saying);
            }
        }
        return decision;
    }

    private static Returned returned(ToReturn asked, DonorReceived donor, History record) {
        Entry last = record.entries().get(record.entries().size() - 1);
        return new Returned(
                asked.earlier(),
                last.number(),
                last.hash(),
                donor.vin(),
                donor.registration(),
                asked.reason().strip());
    }
}

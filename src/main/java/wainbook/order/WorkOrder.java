package wainbook.order;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.OrderSaying.ReturnedUnder;
import wainbook.order.OrderSaying.Stops;

/**
 * A work order as it stands: a fold of its stream.
 *
 * @param links to the vehicle’s other orders
 */
public record WorkOrder(
        String number,
        Ordered ordered,
        Phase phase,
        Optional<DonorReceived> donor,
        Optional<Place> at,
        Optional<Instant> since,
        Map<String, Binding> bindings,
        Map<String, String> facts,
        List<Held> holds,
        Links links) {

    /**
     * The orders of one vehicle before and after this one.
     *
     * @param from what is carried on here; empty for a donor that is converted
     * @param onward the order under which the vehicle came back
     */
    public record Links(Optional<Returned> from, Optional<String> onward) {
        public static final Links NONE = new Links(Optional.empty(), Optional.empty());
    }

    /** How far the order has come. */
    public enum Phase {
        ORDERED,
        DONOR_RECEIVED,
        DONOR_ACCEPTED,
        DONOR_REJECTED,
        ON_LINE,
        OFF_LINE,
        FINISHED,
        HANDED_OVER
    }

    public WorkOrder {
        bindings = Map.copyOf(bindings);
        facts = Map.copyOf(facts);
        holds = List.copyOf(holds);
    }

    /** Empty when nothing was ordered under this number. */
    public static Optional<WorkOrder> of(History history) {
        return history.folded(
                WorkOrder.class,
                Optional.<WorkOrder>empty(),
                (order, entry) -> entry.saying() instanceof OrderSaying said
                        ? next(order, said, history.subject().code(), entry)
                        : order);
    }

    private static Optional<WorkOrder> next(Optional<WorkOrder> order, OrderSaying said, String number, Entry entry) {
        return said instanceof Ordered ordered
                ? Optional.of(begun(number, ordered))
                : order.map(known -> known.after(said, entry.moment().at()));
    }

    private static WorkOrder begun(String number, Ordered ordered) {
        return new WorkOrder(
                number,
                ordered,
                Phase.ORDERED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Map.of(),
                List.of(),
                Links.NONE);
    }

    /** The order under which this vehicle was handed over before. */
    public Optional<String> earlierOrder() {
        return links.from().map(Returned::earlier);
    }

    /** The stage it is at, when it is at one: on the line, or being surveyed. */
    public Optional<String> stage() {
        return at.flatMap(Place::stage);
    }

    /** The sheet of the stage it is at. */
    public Optional<Binding> binding() {
        return stage().map(bindings::get);
    }

    /** The stage after the given one on this order's route; empty after the last. */
    public Optional<String> stageAfter(String stage) {
        int index = ordered.stages().indexOf(stage);
        return index >= 0 && index + 1 < ordered.stages().size()
                ? Optional.of(ordered.stages().get(index + 1))
                : Optional.empty();
    }

    /** Every stage whose gate the vehicle passes: the survey it was received for, then those of its route. */
    public List<String> gates() {
        return Stream.concat(
                        bindings.keySet().stream()
                                .filter(stage -> !ordered.stages().contains(stage)),
                        ordered.stages().stream())
                .toList();
    }

    public List<Held> holdsThatStop(Stops what) {
        return holds.stream().filter(hold -> hold.stops().contains(what)).toList();
    }

    private WorkOrder after(OrderSaying saying, Instant when) {
        if (saying instanceof OrderSaying.FactStated stated) {
            var more = new LinkedHashMap<>(facts);
            more.put(stated.fact(), stated.stated());
            return new WorkOrder(number, ordered, phase, donor, at, since, bindings, more, holds, links);
        }
        if (saying instanceof DonorReceived received) {
            return new WorkOrder(
                    number,
                    ordered,
                    Phase.DONOR_RECEIVED,
                    Optional.of(received),
                    Optional.of(received.at()),
                    Optional.of(when),
                    bound(received.binding()),
                    facts,
                    holds,
                    links);
        }
        if (saying instanceof OrderSaying.DonorAccepted accepted) {
            return placed(Phase.DONOR_ACCEPTED, Optional.of(accepted.to()), when, bindings);
        }
        if (saying instanceof OrderSaying.DonorRejected) {
            return placed(Phase.DONOR_REJECTED, Optional.empty(), when, bindings);
        }
        if (saying instanceof OrderSaying.Moved moved) {
            return placed(
                    moved.direction().leadsTo(),
                    Optional.of(moved.to()),
                    when,
                    moved.binding().map(this::bound).orElse(bindings));
        }
        if (saying instanceof OrderSaying.Rebound rebound) {
            return new WorkOrder(number, ordered, phase, donor, at, since, bound(rebound.to()), facts, holds, links);
        }
        if (saying instanceof Held held) {
            var more = new ArrayList<>(holds);
            more.add(held);
            return new WorkOrder(number, ordered, phase, donor, at, since, bindings, facts, more, links);
        }
        if (saying instanceof OrderSaying.HoldReleased released) {
            var fewer = holds.stream()
                    .filter(hold -> hold.hold() != released.hold())
                    .toList();
            return new WorkOrder(number, ordered, phase, donor, at, since, bindings, facts, fewer, links);
        }
        if (saying instanceof OrderSaying.HandedOver) {
            return placed(Phase.HANDED_OVER, Optional.empty(), when, bindings);
        }
        if (saying instanceof Returned returned) {
            return linked(new Links(Optional.of(returned), links.onward()));
        }
        if (saying instanceof ReturnedUnder onward) {
            return linked(new Links(links.from(), Optional.of(onward.order())));
        }
        throw new IllegalArgumentException("an order cannot be ordered twice: " + number);
    }

    private WorkOrder linked(Links now) {
        return new WorkOrder(number, ordered, phase, donor, at, since, bindings, facts, holds, now);
    }

    private WorkOrder placed(Phase next, Optional<Place> place, Instant when, Map<String, Binding> bound) {
        return new WorkOrder(number, ordered, next, donor, place, Optional.of(when), bound, facts, holds, links);
    }

    private Map<String, Binding> bound(Binding binding) {
        var more = new LinkedHashMap<>(bindings);
        more.put(binding.stage(), binding);
        return more;
    }
}

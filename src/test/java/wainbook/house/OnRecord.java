package wainbook.house;

import io.quarkus.arc.Arc;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.gate.Gate;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.station.StageRecord;
import wainbook.station.work.Workplace;

/** A bus of a test's own whose entries are written straight into the ledger, by no rule but the ledger's own. */
public record OnRecord(String number, String vin) {

    private static final Place YARD = new Place(Optional.empty(), "YARD");

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    /** Ordered, received and accepted: a donor in the yard. */
    public static OnRecord accepted() {
        String unique =
                UUID.randomUUID().toString().replace("-", "").substring(0, 8).toUpperCase(Locale.ROOT);
        var vehicle = new OnRecord("OR-" + unique, "WBLT0000" + unique.replace('O', '0') + "1");
        Route route = route();
        vehicle.say(new Ordered(
                "Vale and Fen Community Buses",
                "bus-12m",
                "bus-12m",
                route.code(),
                route.legs().stream().map(Route.Leg::stage).toList(),
                LocalDate.of(2027, 2, 12)));
        vehicle.say(new DonorReceived(
                vehicle.vin,
                "LT" + unique.substring(0, 2) + " " + unique.substring(2, 5),
                400_000,
                new Place(Optional.of("intake"), "IN-1"),
                new Binding("intake", route.intakeSheet(), 1)));
        vehicle.say(new DonorAccepted("0".repeat(64), YARD));
        return vehicle;
    }

    /** Onto the line or on to the next stage, as if everything before were done. */
    public OnRecord at(String stage, String station) {
        Route.Leg leg = route().leg(stage).orElseThrow();
        boolean waits = order().phase() != WorkOrder.Phase.ON_LINE;
        move(
                waits ? Direction.ONTO_LINE : Direction.FORWARD,
                new Place(Optional.of(stage), station),
                Optional.of(new Binding(stage, leg.checkSheet(), 1)));
        return this;
    }

    /** Signs the gate of the stage it is at, whatever is open. */
    public OnRecord signed() {
        History history = history();
        String stage = order().stage().orElseThrow();
        StageRecord record = Arc.container()
                .instance(Workplace.class)
                .get()
                .record(history, order(), stage)
                .orElseThrow();
        Binding binding = record.binding();
        say(new SignedOff(
                stage,
                binding.sheet(),
                binding.revision(),
                Gate.of(history, record).fingerprint(),
                Optional.empty()));
        return this;
    }

    /** Out of the line, so that its station is free for the next test. */
    public void out() {
        if (order().phase() == WorkOrder.Phase.ON_LINE) {
            move(Direction.OUT, YARD, Optional.empty());
        }
    }

    public Entry say(Saying saying) {
        Actor actor = Actor.of(
                Cast.WORKS_ENGINEER.number(),
                Arc.container().instance(Clock.class).get());
        Subject subject = Subject.workOrder(number);
        return ledger().write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        actor,
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(number + ": " + reasons);
                });
    }

    public History history() {
        return ledger().history(Subject.workOrder(number));
    }

    private void move(Direction direction, Place to, Optional<Binding> binding) {
        say(new Moved(direction, order().at().orElseThrow(), to, binding, List.of(), Optional.empty()));
    }

    private WorkOrder order() {
        return WorkOrder.of(history()).orElseThrow();
    }

    private static Ledger ledger() {
        return Arc.container().instance(Ledger.class).get();
    }

    private static Route route() {
        return Arc.container().instance(Releases.class).get().route("BUS-12M").orElseThrow();
    }
}

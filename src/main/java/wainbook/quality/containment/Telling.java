package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.Holding;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.ReadingsDoubted;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;

/** Tells a vehicle which of its readings are in doubt, and holds it in the same breath where somebody may be hurt. */
@ApplicationScoped
public class Telling {

    private record ToTell(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private final Ledger ledger;
    private final Containments containments;

    Telling(Ledger ledger, Containments containments) {
        this.ledger = ledger;
        this.containments = containments;
    }

    /** Under what id a vehicle is told; the same however often it is tried. */
    static UUID tellingId(UUID said, String order) {
        return derived(said + "/" + order);
    }

    static UUID derived(String text) {
        return UUID.nameUUIDFromBytes(("containment/" + text).getBytes(StandardCharsets.UTF_8));
    }

    /** Tells the vehicles that have not heard yet; what still lacks then. */
    public List<Reason> complete(Containment containment, Actor actor) {
        return tell(containment.opened().subject(), containment.latest(), actor);
    }

    /** Done with what was said once every vehicle has heard of it; refused with what some vehicles stood against. */
    Outcome<Entry> outcome(Subject subject, Entry said, Actor actor) {
        List<Reason> lacking = tell(subject, said, actor);
        return lacking.isEmpty() ? Outcome.done(said) : Outcome.refused(lacking);
    }

    private List<Reason> tell(Subject subject, Entry said, Actor actor) {
        Containment containment = Containment.of(ledger.history(subject)).stream()
                .filter(one ->
                        one.latest().id().equals(said.id()) || one.opened().id().equals(said.id()))
                .findFirst()
                .orElseThrow();
        Map<String, List<Doubted>> touched =
                containments.touched(containment.about(), containment.said().window(), containment.errors());
        return containment.vehicles().stream()
                .flatMap(vehicle ->
                        tell(containment, vehicle.order(), touched.getOrDefault(vehicle.order(), List.of()), actor)
                                .reasons()
                                .stream())
                .toList();
    }

    private Outcome<Entry> tell(Containment containment, String order, List<Doubted> readings, Actor actor) {
        Subject subject = Subject.workOrder(order);
        UUID id = tellingId(containment.latest().id(), order);
        Optional<Entry> before = ledger.history(subject).entry(id);
        return before.map(Outcome::alreadyDone)
                .orElseGet(() -> ledger.write(
                        new ToTell(id, List.of(subject), ReadingsDoubted.class),
                        actor,
                        reading -> decision(containment, reading.of(subject), readings)));
    }

    static Decision decision(Containment containment, History vehicle, List<Doubted> readings) {
        Subject subject = vehicle.subject();
        Optional<VehicleDoubt> before = VehicleDoubts.of(vehicle).of(containment.code());
        boolean held = before.map(VehicleDoubt::holdStands).orElse(false);
        List<Doubted> open = readings.stream()
                .filter(one -> one.verdict() != Sureness.SAFE)
                .filter(one -> before.stream()
                        .flatMap(doubt -> doubt.readings().stream())
                        .noneMatch(known -> known.said().key().equals(one.key())
                                && known.settled().isPresent()))
                .toList();
        List<Stops> stops = held ? List.of() : stops(containment, vehicle, open);
        Optional<Integer> hold = stops.isEmpty() ? Optional.empty() : Optional.of(Holding.next(vehicle));
        Decision told =
                Decision.say(subject, new ReadingsDoubted(containment.code(), containment.about(), readings, hold));
        if (hold.isPresent()) {
            String why = Words.of(
                    "quality.holdReason",
                    containment.code(),
                    containment.about().code(),
                    open.size());
            return told.andSay(subject, new Held(hold.get(), HoldKind.QUALITY, stops, why));
        }
        return held && open.isEmpty()
                ? told.andSay(
                        subject,
                        new HoldReleased(
                                before.flatMap(VehicleDoubt::hold).orElseThrow(),
                                Words.of("quality.releasedWorkedOut", containment.code())))
                : told;
    }

    /**
     * What a vehicle in the works may not do meanwhile. Work goes on, since a re-check is work, unless the proof that people
     * rely on now is itself in doubt. Without danger only the gate of the present stage waits, for readings of that stage.
     */
    private static List<Stops> stops(Containment containment, History vehicle, List<Doubted> open) {
        Optional<WorkOrder> order = WorkOrder.of(vehicle);
        boolean here = order.map(WorkOrder::phase).filter(Telling::inWorks).isPresent();
        if (!here || open.isEmpty()) {
            return List.of();
        }
        boolean grave = containment.said().holdsAll()
                || open.stream().anyMatch(reading -> reading.gravity().grave());
        if (!grave) {
            Optional<String> stage = order.flatMap(WorkOrder::stage);
            return open.stream().anyMatch(reading -> stage.equals(Optional.of(reading.stage())))
                    ? stops(false)
                    : List.of();
        }
        var stops = new ArrayList<Stops>();
        if (proofInDoubt(vehicle, open, containment.about().code())) {
            stops.add(Stops.WORK);
        }
        stops.addAll(stops(true));
        return stops;
    }

    /** What readings in doubt stop at least: where nobody is in danger, a gate. */
    static List<Stops> stops(boolean grave) {
        return grave ? List.of(Stops.SIGN, Stops.MOVE) : List.of(Stops.SIGN);
    }

    private static boolean inWorks(WorkOrder.Phase phase) {
        return switch (phase) {
            case DONOR_RECEIVED, DONOR_ACCEPTED, ON_LINE, OFF_LINE, FINISHED -> true;
            case ORDERED, DONOR_REJECTED, HANDED_OVER -> false;
        };
    }

    private static boolean proofInDoubt(History vehicle, List<Doubted> open, String code) {
        Isolation isolation = Isolation.of(vehicle);
        boolean relied = isolation.state() != State.LIVE && isolation.state() != State.VOID;
        return relied
                && open.stream().anyMatch(reading -> reading.ground() == Ground.PROOF_OF_DEAD)
                && isolation.proof().stream()
                        .flatMap(proof -> Stream.of(proof.tester(), proof.source()))
                        .anyMatch(code::equals);
    }
}

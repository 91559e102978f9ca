package wainbook.handover;

import io.quarkus.arc.Arc;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.gate.Gate;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.handover.record.RecordSaying.InstructionOmitted;
import wainbook.handover.record.RecordSaying.StateRead;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.RecordSaying.ThingsListed;
import wainbook.handover.record.RecordSaying.WarrantyBegun;
import wainbook.house.Cast;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleased;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.station.StageRecord;
import wainbook.station.work.Workplace;
import wainbook.works.appointment.AppointmentKinds;

/**
 * A bus of the demo works that stands finished in the yard, all gates signed: its entries are written straight into the
 * ledger, since what is tested here begins where the work has ended. Its check items were never recorded.
 */
public final class FinishedVehicle {

    private static final Instant BUILT_AT = Cast.ENGAGED_AT.plusSeconds(3_600);
    private static final Place YARD = new Place(Optional.empty(), "YARD");

    private final Subject subject;
    private final Ledger ledger = Arc.container().instance(Ledger.class).get();
    private final Workplace workplace =
            Arc.container().instance(Workplace.class).get();
    private final AppointmentKinds appointments =
            Arc.container().instance(AppointmentKinds.class).get();
    private final Route route =
            Arc.container().instance(Releases.class).get().route("BUS-12M").orElseThrow();
    private Place at = YARD;

    private FinishedVehicle(String number) {
        subject = Subject.workOrder(number);
    }

    /** A plain 12 m bus: nothing cut, weights as they were, driven by batteries of one type. */
    public static Map<String, String> plainFacts() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("category", "M3");
        facts.put("axles", "2");
        facts.put("propulsion_changed", "true");
        facts.put("chassis_cut_or_drilled", "false");
        facts.put("axle_plates_changed", "false");
        facts.put("gross_plated_old", "18000");
        facts.put("gross_plated_new", "18000");
        facts.put("other_engine_on_board", "false");
        facts.put("tacho_fitted", "false");
        facts.put("limiter_required", "false");
        facts.put("tail_lift", "false");
        facts.put("crane_or_hook_loader", "false");
        facts.put("packs", "4");
        facts.put("pack_types", "E60");
        facts.put("charge_ac", "false");
        facts.put("charge_dc", "true");
        facts.put("waste_streams", "");
        facts.put("engine_fate", "undecided");
        facts.put("emission_claim", "false");
        return facts;
    }

    /** It has passed what the works asks for after the line, and its handover record is whole but for the receipt. */
    public static void build(String number, Map<String, String> facts) {
        var vehicle = offTheLine(number, facts);
        vehicle.appointments.all().forEach(kind -> vehicle.say(new AppointmentAttended(kind.code(), true, "")));
        vehicle.driven().recorded();
    }

    /** Its handover record is whole; nobody signed a receipt. */
    FinishedVehicle recorded() {
        say(new StateRead(400_031, 84, "Handover bay"));
        say(new ThingsListed(List.of(new Thing("Vehicle keys", 2))));
        say(new InstructionOmitted("The operator’s people come next week"));
        say(new WarrantyBegun(LocalDate.of(2026, 3, 10), 400_031, "Conversion, 24 months"));
        return this;
    }

    /** It was driven on the road, and nothing was found. */
    FinishedVehicle driven() {
        say(new RoadReleased(1, "0".repeat(64), "7001", List.of(), "Trade plates 114", "Cover 20417", List.of()));
        say(new RoadDriven(
                1,
                "7001",
                "Bypass and back",
                1_000,
                400_000,
                400_030,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                "",
                true));
        return this;
    }

    /** It has only just left the line. */
    static FinishedVehicle offTheLine(String number, Map<String, String> facts) {
        var vehicle = new FinishedVehicle(number);
        List<String> stages =
                vehicle.route.legs().stream().map(Route.Leg::stage).toList();
        vehicle.say(new Ordered("Vale and Fen", "bus-12m", "bus-12m", "BUS-12M", stages, LocalDate.of(2027, 2, 12)));
        facts.forEach((fact, stated) -> vehicle.say(new FactStated(fact, stated)));
        String vin = ("WBHT" + number.replaceAll("[^0-9A-HJ-NPR-Z]", "X") + "00000000000000").substring(0, 17);
        Binding survey = new Binding("intake", vehicle.route.intakeSheet(), 1);
        vehicle.say(
                new DonorReceived(vin, "HT21 BUS", 400_000, new Place(Optional.of("intake"), "IN-" + number), survey));
        vehicle.sign("intake");
        vehicle.say(new DonorAccepted("0".repeat(64), YARD));
        for (Route.Leg leg : vehicle.route.legs()) {
            vehicle.move(
                    vehicle.at.equals(YARD) ? Direction.ONTO_LINE : Direction.FORWARD,
                    new Place(Optional.of(leg.stage()), leg.stage() + "-" + number),
                    Optional.of(new Binding(leg.stage(), leg.checkSheet(), 1)));
            vehicle.sign(leg.stage());
        }
        vehicle.move(Direction.OUT, YARD, Optional.empty());
        return vehicle;
    }

    /** The keys of all rules in the way, were this person to hand it over, whatever their roles. */
    static List<String> rulesFor(String number, Cast person) {
        var vehicle = new FinishedVehicle(number);
        History history = vehicle.ledger.history(vehicle.subject);
        var look = Arc.container().instance(HandoverLook.class).get();
        return look
                .rules(
                        history,
                        WorkOrder.of(history).orElseThrow(),
                        Moment.of(
                                person.number(),
                                history.entries().get(0).moment().at()))
                .against()
                .stream()
                .map(Reason::key)
                .toList();
    }

    private void move(Direction direction, Place to, Optional<Binding> binding) {
        say(new Moved(direction, at, to, binding, List.of(), Optional.empty()));
        at = to;
    }

    private void sign(String stage) {
        History history = ledger.history(subject);
        StageRecord record = workplace
                .record(history, WorkOrder.of(history).orElseThrow(), stage)
                .orElseThrow();
        Binding binding = record.binding();
        say(new SignedOff(
                stage,
                binding.sheet(),
                binding.revision(),
                Gate.of(history, record).fingerprint(),
                Optional.empty()));
    }

    /** By no rule but the ledger's own. */
    public static void handedOver(String number) {
        say(number, new HandedOver("Depot foreman, receipt 1", List.of()));
    }

    /** Something said of it after it was finished. */
    static void say(String number, Saying saying) {
        new FinishedVehicle(number).say(saying);
    }

    private void say(Saying saying) {
        Actor actor = Cast.WORKS_ENGINEER.at(latest());
        ledger.write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        actor,
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(subject + ": " + reasons);
                });
    }

    /** No earlier than the last that was said. */
    private Instant latest() {
        return ledger.history(subject).entries().stream()
                .map(entry -> entry.moment().at())
                .reduce((before, later) -> later)
                .filter(BUILT_AT::isBefore)
                .orElse(BUILT_AT);
    }

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}
}

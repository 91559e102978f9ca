package wainbook.line.forecast;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.gate.Gate;
import wainbook.gate.Gate.Standing;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.OnTheLine;
import wainbook.line.forecast.Away.WorkingMinutes;
import wainbook.line.forecast.OnHand.Doing;
import wainbook.line.forecast.OnHand.OpenHold;
import wainbook.line.station.Situation;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Station;
import wainbook.process.sheet.CheckSheet;

/** Reads from the record which vehicles are still to be finished, how far they are, and which stages they pass. */
record Muster(Ledger ledger, Releases releases, OnTheLine line, WorkingMinutes minutes) {

    private static final List<Phase> UNFINISHED =
            List.of(Phase.ON_LINE, Phase.OFF_LINE, Phase.DONOR_ACCEPTED, Phase.DONOR_RECEIVED, Phase.ORDERED);

    /** Stages in the works' own numbering: those of a route, and those of an older one that a vehicle still has. */
    List<TheLineNow.Post> posts(List<OnHand> vehicles) {
        List<String> passed = Stream.concat(
                        releases.routes().stream()
                                .flatMap(route -> route.legs().stream().map(Route.Leg::stage)),
                        vehicles.stream().flatMap(one -> one.plannedMinutes().keySet().stream()))
                .distinct()
                .toList();
        return releases.stages().stream()
                .filter(stage -> passed.contains(stage.code()))
                .map(stage -> new TheLineNow.Post(
                        stage.code(),
                        stage.title(),
                        releases.stationsOf(stage.code()).stream()
                                .map(Station::code)
                                .toList()))
                .toList();
    }

    List<OnHand> vehicles() {
        return UNFINISHED.stream()
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .flatMap(row -> {
                    History history = ledger.history(Subject.workOrder(row.number));
                    return WorkOrder.of(history).map(order -> onHand(history, order)).stream();
                })
                .toList();
    }

    private OnHand onHand(History history, WorkOrder order) {
        Away away = Away.of(history);
        Instant came = order.since().orElse(line.now());
        Situation here = line.situation(history, order);
        Doing doing = doing(order, here);
        WorkingMinutes there = doing == Doing.BAY
                ? minutes
                : order.at().map(at -> minutes.at(at.place())).orElse(minutes);
        double elapsed = doing == Doing.UNSIGNED
                ? there.between(lastEvidence(here).orElse(came), line.now())
                : away.present(came, line.now(), there) - openHoldMinutes(history, order, came, there);
        return new OnHand(
                order.number(),
                order.ordered().vehicleKind(),
                doing,
                order.stage(),
                order.at().map(Place::place),
                Math.max(0, elapsed),
                planned(order),
                holds(history, order),
                order.ordered().promisedOn());
    }

    private static Doing doing(WorkOrder order, Situation here) {
        return switch (order.phase()) {
            case ON_LINE -> atStation(here);
            case OFF_LINE -> Doing.BAY;
            case DONOR_ACCEPTED -> Doing.ACCEPTED;
            case DONOR_RECEIVED -> Doing.SURVEY;
            case ORDERED, DONOR_REJECTED, FINISHED, HANDED_OVER -> Doing.ORDERED;
        };
    }

    private static Doing atStation(Situation here) {
        Standing standing = here.gate().map(Gate::standing).orElse(Standing.UNSIGNED);
        if (standing == Standing.SIGNED) {
            return Doing.SIGNED;
        }
        boolean done =
                here.record().filter(record -> record.unsettled().isEmpty()).isPresent()
                        && here.nonconformities().isEmpty()
                        && standing != Standing.REFUSED;
        return done ? Doing.UNSIGNED : Doing.WORK;
    }

    private static Optional<Instant> lastEvidence(Situation here) {
        return here.record().stream()
                .flatMap(record -> record.items().stream())
                .flatMap(item -> item.entries().stream())
                .map(entry -> entry.moment().at())
                .max(Comparator.naturalOrder());
    }

    /** Of the stages it passes, those with a sheet: the one it is bound to, or else the one in force. */
    private Map<String, Integer> planned(WorkOrder order) {
        Map<String, Integer> planned = new LinkedHashMap<>();
        for (String stage : order.ordered().stages()) {
            Optional.ofNullable(order.bindings().get(stage))
                    .map(bound -> releases.sheet(bound.sheet(), bound.revision()))
                    .or(() -> releases.leg(order.ordered().route(), stage)
                            .flatMap(leg -> releases.sheetInForce(leg.checkSheet()))
                            .map(released -> released.sheet()))
                    .map(CheckSheet::plannedMinutes)
                    .ifPresent(sheet -> planned.put(stage, Math.max(1, sheet)));
        }
        return planned;
    }

    private List<OpenHold> holds(History history, WorkOrder order) {
        return open(history, order)
                .map(entry -> new OpenHold(
                        ((Held) entry.saying()).stops().contains(Stops.WORK),
                        minutes.between(entry.moment().at(), line.now())))
                .toList();
    }

    /** Nothing has been done since the first hold that stops work and still stands. */
    private double openHoldMinutes(History history, WorkOrder order, Instant came, WorkingMinutes there) {
        Predicate<Entry> stopsWork = entry -> ((Held) entry.saying()).stops().contains(Stops.WORK);
        return open(history, order)
                .filter(stopsWork)
                .map(entry -> entry.moment().at())
                .map(at -> at.isBefore(came) ? came : at)
                .map(at -> (double) there.between(at, line.now()))
                .max(Comparator.naturalOrder())
                .orElse(0.0);
    }

    private static Stream<Entry> open(History history, WorkOrder order) {
        return history.saying(Held.class).filter(entry -> order.holds().contains(entry.saying()));
    }
}

package wainbook.line.forecast.state;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.gate.Gate;
import wainbook.gate.Gate.Standing;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.forecast.past.Away;
import wainbook.line.forecast.past.Away.Spell;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.line.forecast.past.Cures;
import wainbook.line.forecast.past.Idle;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Place;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.sheet.CheckSheet;
import wainbook.station.StageRecord;
import wainbook.station.help.HelpCall;

/**
 * Reads from the record of vehicles which are still to be finished, how far they are, and which stages they pass.
 *
 * @param after what comes after the line
 * @param now the time at which the records end
 */
record Muster(ProcessToday process, WorkingMinutes minutes, After after, Instant now) {

    private static final List<Phase> UNFINISHED =
            List.of(Phase.ON_LINE, Phase.OFF_LINE, Phase.DONOR_ACCEPTED, Phase.DONOR_RECEIVED, Phase.ORDERED);

    List<OnHand> vehicles(List<History> orders) {
        return orders.stream()
                .flatMap(history -> WorkOrder.of(history)
                        .filter(order -> UNFINISHED.contains(order.phase()) || after.waitsFor(order))
                        .map(order -> onHand(history, order))
                        .stream())
                .sorted(Comparator.comparing(OnHand::order))
                .toList();
    }

    private OnHand onHand(History history, WorkOrder order) {
        Away away = Away.of(history);
        Instant came = order.since().orElse(now);
        Optional<Gate> gate = order.stage()
                .flatMap(stage -> StageRecord.of(history, order, stage, process::sheet))
                .map(record -> Gate.of(history, record));
        Doing doing = doing(order, gate);
        WorkingMinutes there = doing == Doing.BAY
                ? minutes
                : order.at().map(at -> minutes.at(at.place())).orElse(minutes);
        double elapsed = doing == Doing.UNSIGNED
                ? there.between(lastEvidence(gate).orElse(came), now)
                : away.and(sinceThen(history, order, doing)).present(came, now, there);
        return new OnHand(
                order.number(),
                order.ordered().vehicleKind(),
                doing,
                order.stage(),
                order.at().map(Place::place),
                came,
                elapsed,
                planned(order),
                stops(history, order),
                order.ordered().promisedOn(),
                new Needs(AwaitedParts.of(history).open(), cures(order, gate)));
    }

    private static Doing doing(WorkOrder order, Optional<Gate> gate) {
        return switch (order.phase()) {
            case ON_LINE -> atStation(gate);
            case OFF_LINE -> Doing.BAY;
            case DONOR_ACCEPTED -> Doing.ACCEPTED;
            case DONOR_RECEIVED -> Doing.SURVEY;
            case FINISHED -> Doing.AFTER;
            case ORDERED, DONOR_REJECTED, HANDED_OVER -> Doing.ORDERED;
        };
    }

    private static Doing atStation(Optional<Gate> gate) {
        Standing standing = gate.map(Gate::standing).orElse(Standing.UNSIGNED);
        if (standing == Standing.SIGNED) {
            return Doing.SIGNED;
        }
        boolean done =
                gate.filter(known -> known.record().unsettled().isEmpty()).isPresent();
        return done && standing != Standing.REFUSED ? Doing.UNSIGNED : Doing.WORK;
    }

    private static Optional<Instant> lastEvidence(Optional<Gate> gate) {
        return gate.stream()
                .flatMap(known -> known.record().items().stream())
                .flatMap(item -> item.entries().stream())
                .map(entry -> entry.moment().at())
                .max(Comparator.naturalOrder());
    }

    /** Of the stages it passes, those with a sheet. */
    private Map<String, Integer> planned(WorkOrder order) {
        Map<String, Integer> planned = new LinkedHashMap<>();
        order.ordered()
                .stages()
                .forEach(stage -> sheet(order, stage)
                        .map(Cures::workMinutes)
                        .ifPresent(minutes -> planned.put(stage, Math.max(1, minutes))));
        return planned;
    }

    /** The one it is bound to, or else the one in force. */
    private Optional<CheckSheet> sheet(WorkOrder order, String stage) {
        return Optional.ofNullable(order.bindings().get(stage))
                .map(bound -> process.sheet(bound.sheet(), bound.revision()))
                .or(() -> process.inForce(order.ordered().route(), stage));
    }

    /** At the stage where it is what its record leaves open. */
    private Map<String, Cures> cures(WorkOrder order, Optional<Gate> gate) {
        Map<String, Cures> cures = new HashMap<>();
        for (String stage : order.ordered().stages()) {
            gate.map(Gate::record)
                    .filter(record -> record.stage().equals(stage))
                    .map(Cures::of)
                    .or(() -> sheet(order, stage).map(sheet -> Cures.of(sheet, order.facts())))
                    .filter(found -> !found.equals(Cures.NONE))
                    .ifPresent(found -> cures.put(stage, found));
        }
        return cures;
    }

    private List<Stop.Open> stops(History history, WorkOrder order) {
        Stream<Stop.Open> holds = open(history, order)
                .map(entry -> stop(
                        Stop.HOLD,
                        ((Held) entry.saying()).hold(),
                        ((Held) entry.saying()).stops().contains(Stops.WORK),
                        entry.moment().at()));
        Stream<Stop.Open> undecided = Nonconformities.of(history).awaitingDisposition().stream()
                .map(open -> stop(Stop.NONCONFORMITY, open.number(), false, open.since()));
        Stream<Stop.Open> calls = HelpCall.open(history).stream()
                .filter(call -> call.said().workStands())
                .map(call -> stop(Stop.HELP, call.number(), true, call.since()));
        return Stream.of(holds, undecided, calls).flatMap(some -> some).toList();
    }

    private Stop.Open stop(Stop sort, int number, boolean stopsWork, Instant since) {
        return new Stop.Open(sort, number, stopsWork, minutes.between(since, now));
    }

    /** Kept from work by holds that still stand; at work also by what cured and by parts that were missing. */
    private List<Spell> sinceThen(History history, WorkOrder order, Doing doing) {
        Stream<Spell> held = open(history, order)
                .filter(entry -> ((Held) entry.saying()).stops().contains(Stops.WORK))
                .map(entry -> new Spell(entry.moment().at(), now, true));
        Stream<Spell> idle = order.stage().filter(stage -> doing == Doing.WORK).stream()
                .flatMap(stage -> Idle.of(history).at(stage).stream());
        return Stream.concat(held, idle).toList();
    }

    private static Stream<Entry> open(History history, WorkOrder order) {
        return history.saying(Held.class).filter(entry -> order.holds().contains(entry.saying()));
    }
}

package wainbook.line.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.gate.Gate;
import wainbook.isolation.Isolation;
import wainbook.isolation.paper.PaperIsolations;
import wainbook.isolation.proof.Lock;
import wainbook.ledger.History;
import wainbook.line.move.Move.ToMove;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Station;
import wainbook.process.plan.Plan;
import wainbook.safety.stop.Stop;
import wainbook.station.StageRecord;

/**
 * All rules of a move. Evaluated all, shown all.
 *
 * @param stage the stage the vehicle would be at
 * @param occupant the order whose vehicle stands at the place already
 * @param record how the present stage stands
 * @param barsDriving work given to a later stage that bars driving until it is done
 * @param stopped safety stops at the place it would come to
 * @param heldByRule what holds that stand by rule give against moving
 */
public record MoveRules(
        History history,
        WorkOrder order,
        ToMove asked,
        Optional<String> stage,
        Optional<Released> sheet,
        Optional<Station> place,
        Optional<String> occupant,
        Optional<StageRecord> record,
        List<String> barsDriving,
        List<Stop> stopped,
        List<Reason> heldByRule) {

    /** What the mover looks at and confirms before any wheel turns. */
    public static final List<String> CONFIRMED = List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan");

    List<Reason> against() {
        var against = new ArrayList<Reason>();
        phase(against);
        gate(against);
        place(against);
        power(against);
        order.holdsThatStop(Stops.MOVE)
                .forEach(hold -> against.add(Reason.of("line.held", Reason.WORKS_RULE, hold.hold(), hold.reason())
                        .liftedAt("/orders/" + order.number() + "#holds")));
        against.addAll(heldByRule);
        CONFIRMED.stream()
                .filter(key -> !asked.confirmed().contains(key))
                .forEach(key -> against.add(Reason.of("line.notConfirmed", Reason.PRACTICE, key)));
        if (needsReason() && asked.reason().filter(text -> !text.isBlank()).isEmpty()) {
            against.add(Reason.of("line.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        return against;
    }

    private void phase(List<Reason> against) {
        boolean fits = switch (asked.direction()) {
            case ONTO_LINE -> order.phase() == Phase.DONOR_ACCEPTED;
            case FORWARD, OUT, OFF_LINE -> order.phase() == Phase.ON_LINE;
            case BACK -> order.phase() == Phase.ON_LINE || order.phase() == Phase.FINISHED;
            case BACK_ON -> order.phase() == Phase.OFF_LINE;
        };
        if (!fits) {
            against.add(Reason.of(
                    "line.cannotFromHere", Reason.WORKS_RULE, order.number(), asked.direction(), order.phase()));
        } else if (asked.direction() == Direction.FORWARD && stage.isEmpty()) {
            against.add(Reason.of("line.lastStage", Reason.WORKS_RULE, order.number()));
        } else if (asked.direction() == Direction.OUT
                && order.stage().flatMap(order::stageAfter).isPresent()) {
            against.add(Reason.of("line.notLastStage", Reason.WORKS_RULE, order.number()));
        } else if (asked.direction() == Direction.BACK && !earlier()) {
            against.add(Reason.of("line.notEarlier", Reason.WORKS_RULE, order.number()));
        }
    }

    private boolean earlier() {
        List<String> stages = order.ordered().stages();
        int to = stage.map(stages::indexOf).orElse(-1);
        int from = order.phase() == Phase.FINISHED
                ? stages.size()
                : order.stage().map(stages::indexOf).orElse(-1);
        return to >= 0 && to < from;
    }

    private void gate(List<Reason> against) {
        boolean leavesDone = asked.direction() == Direction.FORWARD || asked.direction() == Direction.OUT;
        if (!leavesDone || record.isEmpty()) {
            return;
        }
        Gate gate = Gate.of(history, record.get());
        String lift = "/gates/" + order.number() + "/" + record.get().stage();
        switch (gate.standing()) {
            case SIGNED -> {}
            case UNSIGNED, REFUSED ->
                against.add(Reason.of(
                                "line.gateUnsigned",
                                Reason.WORKS_RULE,
                                record.get().stage())
                        .liftedAt(lift));
            case CHANGED_SINCE_SIGNED ->
                against.add(Reason.of(
                                "line.gateChanged",
                                Reason.WORKS_RULE,
                                record.get().stage())
                        .liftedAt(lift));
        }
    }

    private void place(List<Reason> against) {
        boolean ontoStation = asked.direction().leadsTo() == Phase.ON_LINE;
        if (ontoStation && place.filter(known -> known.stage().equals(stage)).isEmpty()) {
            against.add(Reason.of("line.notAStationOf", Reason.WORKS_RULE, asked.destination(), stage.orElse("–"))
                    .liftedAt("#to"));
        }
        if (!ontoStation && place.filter(known -> known.stage().isEmpty()).isEmpty()) {
            against.add(Reason.of("line.notOffTheLine", Reason.WORKS_RULE, asked.destination())
                    .liftedAt("#to"));
        }
        stopped.forEach(stop ->
                against.add(Reason.of("line.placeStopped", Reason.WORKS_RULE, asked.destination(), stop.number())
                        .liftedAt(stop.path())));
        if (ontoStation) {
            occupant.ifPresent(
                    other -> against.add(Reason.of("line.occupied", Reason.WORKS_RULE, asked.destination(), other)
                            .liftedAt("/orders/" + other)));
            if (sheet.isEmpty()
                    && stage.filter(code -> !order.bindings().containsKey(code)).isPresent()) {
                against.add(Reason.of("line.noSheet", Reason.WORKS_RULE, stage.get())
                        .liftedAt("/process"));
            }
        }
    }

    /** A vehicle moves with locks on only where its plan lets them travel, and never during live work. */
    private void power(List<Reason> against) {
        Isolation isolation = Isolation.of(history);
        String desk = "/isolation/" + order.number();
        boolean travels = isolation.plan().filter(Plan::mayTravel).isPresent();
        if (!isolation.locks().isEmpty() && !travels) {
            String owners =
                    isolation.locks().stream().map(Lock::owner).distinct().collect(Collectors.joining(", "));
            against.add(Reason.of("line.locksOn", Reason.PRACTICE, owners).liftedAt(desk));
        }
        PaperIsolations.of(history)
                .open()
                .forEach(form -> against.add(
                        Reason.of("line.isolatedOnPaper", Reason.PRACTICE, form).liftedAt("/paper/" + form)));
        if (isolation.live().isPresent()) {
            against.add(Reason.of("line.liveWork", Reason.WORKS_RULE).liftedAt(desk));
        }
        if (asked.direction() == Direction.OUT && !barsDriving.isEmpty()) {
            against.add(Reason.of("line.drivingBarred", Reason.WORKS_RULE, String.join(", ", barsDriving))
                    .liftedAt("/station/" + order.number()));
        }
    }

    private boolean needsReason() {
        return asked.direction() == Direction.OFF_LINE || asked.direction() == Direction.BACK;
    }
}

package wainbook.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.gate.Gate;
import wainbook.gate.Gate.Standing;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.promise.PromiseKept;
import wainbook.handover.record.RecordRules;
import wainbook.handover.requirement.RuleSet;
import wainbook.ledger.History;
import wainbook.line.appointment.Appointments;
import wainbook.line.road.RoadUse;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.FactQuestion;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.calibration.Comparison;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.station.DeferredWork;

/**
 * All rules that handing over stands under. Evaluated all, shown all.
 *
 * @param appointments that the works asks for after the line
 * @param documents empty where the vehicle's market has no rules here
 * @param who hands it over
 * @param heldByRule what holds that stand by rule give against it
 * @param calibration as it was asked and read, by what is released now
 */
public record HandoverRules(
        History history,
        WorkOrder order,
        List<GateAt> gates,
        List<DeferredWork> deferred,
        Appointments appointments,
        Optional<DocumentSet> documents,
        String who,
        List<Reason> heldByRule,
        Comparison calibration) {

    /** The gate of a stage; without one where the vehicle has not been. */
    public record GateAt(String stage, String title, Optional<Gate> gate) {
        boolean stands(Standing standing) {
            return gate.map(Gate::standing).orElse(Standing.UNSIGNED) == standing;
        }

        public boolean isSignedAsItStands() {
            return stands(Standing.SIGNED);
        }
    }

    public HandoverRules {
        gates = List.copyOf(gates);
        deferred = List.copyOf(deferred);
        heldByRule = List.copyOf(heldByRule);
    }

    public List<Reason> against() {
        return Stream.concat(vehicleAgainst().stream(), documentsAgainst().stream())
                .toList();
    }

    /** What stands against it at the vehicle itself. */
    public List<Reason> vehicleAgainst() {
        if (order.phase() == Phase.HANDED_OVER) {
            return List.of(Reason.of("handover.handedOverAlready", Reason.WORKS_RULE, order.number())
                    .liftedAt(page()));
        }
        var against = new ArrayList<Reason>();
        if (order.phase() != Phase.FINISHED) {
            against.add(Reason.of("handover.notFinished", Reason.WORKS_RULE, order.number())
                    .liftedAt(vehicle()));
        }
        gates(against);
        matters(against);
        road(against);
        against.addAll(RecordRules.of(history, order, documents).against());
        if (documents.isEmpty()) {
            against.add(Reason.of(
                            "handover.noRules",
                            Reason.WORKS_RULE,
                            HandoverLook.market(order),
                            String.join(", ", RuleSet.there()))
                    .liftedAt(fact("market")));
        }
        return against;
    }

    /** What stands against it in its documents. */
    public List<Reason> documentsAgainst() {
        if (order.phase() == Phase.HANDED_OVER) {
            return List.of();
        }
        return documents.stream()
                .flatMap(set -> set.documents().stream())
                .filter(document -> document.bars() || ownWaiver(document))
                .map(document -> document.bars()
                        ? bar(document)
                        : Reason.of("handover.ownWaiver", Reason.WORKS_RULE, document.id())
                                .liftedAt(page(document)))
                .toList();
    }

    private boolean ownWaiver(Document document) {
        return document.waivedAway()
                && document.noted().filter(note -> note.who().equals(who)).isPresent();
    }

    private void gates(List<Reason> against) {
        List<GateAt> unsigned = gates.stream()
                .filter(gate -> gate.stands(Standing.UNSIGNED) || gate.stands(Standing.REFUSED))
                .toList();
        if (!unsigned.isEmpty()) {
            against.add(Reason.of("handover.gatesUnsigned", Reason.WORKS_RULE, unsigned.size(), titles(unsigned))
                    .liftedAt(vehicle() + "#gates"));
        }
        gates.stream()
                .filter(gate -> gate.stands(Standing.CHANGED_SINCE_SIGNED))
                .forEach(gate -> against.add(Reason.of("handover.gateChanged", Reason.WORKS_RULE, gate.title())
                        .liftedAt("/gates/" + order.number() + "/" + gate.stage())));
    }

    private void matters(List<Reason> against) {
        Stream.concat(order.holdsThatStop(Stops.MOVE).stream(), order.holdsThatStop(Stops.SIGN).stream())
                .distinct()
                .forEach(hold -> against.add(Reason.of("handover.held", Reason.WORKS_RULE, hold.hold(), hold.reason())
                        .liftedAt(vehicle() + "#holds")));
        against.addAll(heldByRule);
        sinceLastGate(against);
        Nonconformities.of(history)
                .awaitingDisposition()
                .forEach(open -> against.add(Reason.of(
                                "handover.nonconformityOpen",
                                Reason.WORKS_RULE,
                                open.number(),
                                open.opened().what())
                        .liftedAt(vehicle() + "#matters")));
        VehicleDoubts.of(history)
                .open()
                .forEach(doubt -> against.add(Reason.of(
                                "handover.doubtOpen",
                                "ISO 9001:2015 7.1.5.2 (clause from memory)",
                                doubt.containment(),
                                doubt.open().size())
                        .liftedAt(doubt.path(order.number()))));
        promises().stream()
                .filter(PromiseKept::bars)
                .forEach(one -> against.add(Reason.of(
                                "handover.promiseOpen",
                                Reason.WORKS_RULE,
                                one.promise().number(),
                                one.promise().said().option())
                        .liftedAt(vehicle() + "/promises")));
        deferred.forEach(work -> against.add(Reason.of(
                        "handover.workDeferred", Reason.WORKS_RULE, work.about().item(), work.toStage())
                .liftedAt(vehicle() + "#entry-" + work.entry().number())));
        appointments.all().stream()
                .filter(appointment -> !appointment.isPassed())
                .forEach(appointment -> against.add(Reason.of(
                                "handover.appointmentOpen",
                                Reason.WORKS_RULE,
                                appointment.kind().title())
                        .liftedAt(vehicle() + "/appointments")));
    }

    /** The last gate compared the calibration; what was withdrawn since would leave with the vehicle unnoticed. */
    private void sinceLastGate(List<Reason> against) {
        if (!gates.isEmpty() && gates.get(gates.size() - 1).isSignedAsItStands()) {
            against.addAll(calibration.against());
        }
    }

    /** Everything promised to the operator, with its evidence. */
    public List<PromiseKept> promises() {
        return PromiseKept.of(
                history, gates.stream().flatMap(at -> at.gate().stream()).map(Gate::record), documents);
    }

    private void road(List<Reason> against) {
        if (!RoadUse.of(history).provedOnTheRoad()) {
            against.add(Reason.of("handover.roadNotProved", Reason.WORKS_RULE).liftedAt(vehicle() + "/road"));
        }
    }

    private Reason bar(Document document) {
        String source = document.rule().source().document() + " "
                + document.rule().source().clause();
        String id = document.id();
        String name = document.rule().document();
        if (document.waitsForFacts()) {
            List<String> facts = document.requirement().missingFacts();
            return Reason.of(
                            "handover.factsMissing",
                            source,
                            id,
                            name,
                            facts.stream().map(FactQuestion::name).collect(Collectors.joining(", ")))
                    .liftedAt(fact(facts.get(0)));
        }
        Reason reason = switch (document.standing()) {
            case ASK -> Reason.of("handover.documentAsked", source, id, name);
            case APPLIED_FOR -> Reason.of("handover.documentAppliedFor", source, id, name);
            case REFUSED -> Reason.of("handover.documentRefused", source, id, name);
            case EXPIRED -> Reason.of("handover.documentExpired", source, id, name);
            case NEEDED, IN_HAND, WAIVED, NOT_NEEDED -> Reason.of("handover.documentMissing", source, id, name);
        };
        return reason.liftedAt(page(document));
    }

    private static String titles(List<GateAt> gates) {
        return gates.stream().map(GateAt::title).collect(Collectors.joining(", "));
    }

    private String vehicle() {
        return "/orders/" + order.number();
    }

    private String fact(String name) {
        return vehicle() + "/facts?fact=" + name;
    }

    private String page() {
        return "/handover/" + order.number();
    }

    private String page(Document document) {
        return page() + "/documents/" + document.id();
    }
}

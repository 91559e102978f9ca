package wainbook.handover.road;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.gate.GateRules;
import wainbook.handover.HandoverRules.GateAt;
import wainbook.handover.document.Document;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.requirement.Rule.Due;
import wainbook.handover.road.RoadEvidence.Sort;
import wainbook.isolation.Isolation;
import wainbook.ledger.History;
import wainbook.line.road.RoadUse;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.permit.Permits;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/**
 * All rules that a vehicle's use on the road stands under. Evaluated all, shown all.
 *
 * @param before the gates of the stages before the last
 * @param atLast whether the vehicle has come to its last stage, where brakes and steering are tried as built
 * @param barsDriving items given to a later stage that bar driving until they are done
 * @param documents empty where the vehicle's market has no rules here
 * @param heldByRule what holds that stand by rule give against it
 */
public record RoadRules(
        History history,
        WorkOrder order,
        List<GateAt> before,
        boolean atLast,
        RoadEvidence evidence,
        List<String> barsDriving,
        Optional<DocumentSet> documents,
        Person signer,
        Instant now,
        LocalDate today,
        List<Reason> heldByRule) {

    /** Held by whoever may drive a vehicle that is not handed over yet; the licence was seen. */
    public static final String DRIVER = "ROAD-DRIVE";

    private static final Set<Phase> NOT_BUILT = Set.of(Phase.ORDERED, Phase.DONOR_RECEIVED, Phase.DONOR_REJECTED);
    private static final String CLOSED = "common practice, no source: nothing open, locked or live is driven";

    public RoadRules {
        before = List.copyOf(before);
        barsDriving = List.copyOf(barsDriving);
        heldByRule = List.copyOf(heldByRule);
    }

    public RoadUse use() {
        return RoadUse.of(history);
    }

    /** What stands against releasing it, whoever drives. */
    public List<Reason> against() {
        return Stream.of(vehicle(), papers(), signing()).flatMap(List::stream).toList();
    }

    /** What stands against this driver. */
    public List<Reason> against(Person driver) {
        return CompetenceRule.against(driver, DRIVER, today).stream()
                .map(reason -> reason.liftedAt("#driver"))
                .toList();
    }

    /** What has disturbed the release in force since it was signed; empty where none is in force. */
    public List<Reason> disturbed() {
        return use().inForce()
                .map(release -> {
                    var since = new ArrayList<>(vehicle());
                    if (!release.said().fingerprint().equals(evidence.fingerprint())) {
                        since.add(0, Reason.of("handover.roadEvidenceChanged", Reason.WORKS_RULE, release.number()));
                    }
                    return List.copyOf(since);
                })
                .orElse(List.of());
    }

    /** Whether it may be driven now. */
    public boolean mayDrive() {
        return use().inForce().isPresent() && disturbed().isEmpty();
    }

    public List<Document> beforeRoadUse() {
        return documents.stream()
                .flatMap(set -> set.documents().stream())
                .filter(document -> document.rule().due() == Due.BEFORE_ROAD_USE)
                .toList();
    }

    private List<Reason> vehicle() {
        if (order.phase() == Phase.HANDED_OVER || NOT_BUILT.contains(order.phase())) {
            return List.of(Reason.of("handover.roadNotNow", Reason.WORKS_RULE, order.number())
                    .liftedAt(page()));
        }
        var against = new ArrayList<Reason>();
        if (!atLast) {
            against.add(Reason.of("handover.roadNotAtLast", Reason.WORKS_RULE, order.number())
                    .liftedAt(page()));
        }
        gates(against);
        evidence(against);
        electrical(against);
        if (!barsDriving.isEmpty()) {
            against.add(Reason.of("handover.roadBarred", Reason.WORKS_RULE, String.join(", ", barsDriving))
                    .liftedAt(page() + "#matters"));
        }
        matters(against);
        return against;
    }

    private void gates(List<Reason> against) {
        List<GateAt> open =
                before.stream().filter(gate -> !gate.isSignedAsItStands()).toList();
        if (!open.isEmpty()) {
            String titles = open.stream().map(GateAt::title).collect(Collectors.joining(", "));
            against.add(Reason.of("handover.roadGates", Reason.WORKS_RULE, open.size(), titles)
                    .liftedAt(page() + "#gates"));
        }
    }

    private void evidence(List<Reason> against) {
        for (Sort sort : List.of(Sort.BRAKES, Sort.STEERING)) {
            if (evidence.hasNothingOf(sort)) {
                against.add(Reason.of("handover.roadNothing" + sort.key(), Reason.WORKS_RULE, order.number())
                        .liftedAt(page()));
            }
        }
        evidence.wanting()
                .forEach(line -> against.add(Reason.of(
                                "handover.roadItem" + line.sort().key(),
                                Reason.WORKS_RULE,
                                line.item().item().title(),
                                line.item().key())
                        .liftedAt("/gates/" + order.number() + "/" + line.stage() + "#item-"
                                + line.item().key())));
    }

    private void electrical(List<Reason> against) {
        if (!Isolation.of(history).at(now).closed()) {
            against.add(Reason.of("handover.roadIsolation", CLOSED, order.number())
                    .liftedAt("/isolation/" + order.number()));
        }
        Permits.of(history)
                .open()
                .forEach(permit -> against.add(Reason.of("handover.roadPermit", CLOSED, permit.number())
                        .liftedAt("/permits")));
    }

    private void matters(List<Reason> against) {
        Stream.of(Stops.MOVE, Stops.WORK)
                .flatMap(stops -> order.holdsThatStop(stops).stream())
                .distinct()
                .forEach(hold ->
                        against.add(Reason.of("handover.roadHeld", Reason.WORKS_RULE, hold.hold(), hold.reason())
                                .liftedAt(page() + "#holds")));
        against.addAll(heldByRule);
        Nonconformities.of(history)
                .awaitingDisposition()
                .forEach(open -> against.add(Reason.of(
                                "handover.roadNonconformity",
                                Reason.WORKS_RULE,
                                open.number(),
                                open.opened().what())
                        .liftedAt(page() + "#matters")));
        VehicleDoubts.of(history)
                .open()
                .forEach(doubt -> against.add(Reason.of(
                                "handover.roadDoubt",
                                Reason.WORKS_RULE,
                                doubt.containment(),
                                doubt.open().size())
                        .liftedAt(doubt.path(order.number()))));
    }

    private List<Reason> papers() {
        String documentPage = "/handover/" + order.number();
        if (documents.isEmpty()) {
            return List.of(Reason.of("handover.roadNoRules", Reason.WORKS_RULE).liftedAt(documentPage));
        }
        return beforeRoadUse().stream()
                .filter(document ->
                        document.rule().mayBar() && document.standing().isOpen())
                .map(document -> Reason.of(
                                "handover.roadDocument",
                                document.rule().source().document() + " "
                                        + document.rule().source().clause(),
                                document.id(),
                                document.rule().document())
                        .liftedAt(documentPage + "/documents/" + document.id()))
                .toList();
    }

    private List<Reason> signing() {
        var against = new ArrayList<Reason>();
        CompetenceRule.against(signer, GateRules.COMPETENCE, today).ifPresent(against::add);
        long own = evidence.by(signer.number());
        if (own > 0) {
            against.add(Reason.of("handover.roadOwnWork", Reason.WORKS_RULE, own));
        }
        return against;
    }

    private String page() {
        return "/orders/" + order.number();
    }
}

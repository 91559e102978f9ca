package wainbook.handover.road;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.handover.HandoverLook;
import wainbook.handover.HandoverRules.GateAt;
import wainbook.handover.road.RoadEvidence.Line;
import wainbook.handover.road.RoadEvidence.Sort;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.StandingHolds;
import wainbook.process.Releases;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.BeyondConcession;
import wainbook.process.sheet.CheckItem;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Bar;
import wainbook.station.deferral.BarredUntilDone;
import wainbook.station.work.Workplace;
import wainbook.works.Person;

/** Brings together what a release for the road is judged from. */
@ApplicationScoped
public class RoadLook {

    private final Ledger ledger;
    private final Workplace workplace;
    private final Releases releases;
    private final BarredUntilDone barred;
    private final HandoverLook handover;
    private final StandingHolds holds;

    RoadLook(
            Ledger ledger,
            Workplace workplace,
            Releases releases,
            BarredUntilDone barred,
            HandoverLook handover,
            StandingHolds holds) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.releases = releases;
        this.barred = barred;
        this.handover = handover;
        this.holds = holds;
    }

    /** The rules for the person of the moment; empty where there is no such order. */
    public Optional<RoadRules> at(History history, Moment moment) {
        return WorkOrder.of(history).map(order -> rules(history, order, moment));
    }

    public Person person(String number) {
        return Person.of(ledger.history(Subject.person(number)));
    }

    private RoadRules rules(History history, WorkOrder order, Moment moment) {
        List<GateAt> gates = handover.gates(history, order);
        return new RoadRules(
                history,
                order,
                gates.subList(0, Math.max(0, gates.size() - 1)),
                !gates.isEmpty() && gates.get(gates.size() - 1).gate().isPresent(),
                evidence(history, order),
                barred.barring(Bar.DRIVING, history),
                handover.documents(history, order, moment.at()),
                person(moment.who()),
                moment.at(),
                handover.today(moment.at()),
                holds.against(order, Stops.MOVE, Stops.WORK));
    }

    private RoadEvidence evidence(History history, WorkOrder order) {
        var lines = new ArrayList<Line>();
        for (String stage : order.gates()) {
            workplace.record(history, order, stage).map(StageRecord::items).stream()
                    .flatMap(List::stream)
                    .forEach(item -> sort(item.item())
                            .ifPresent(sort -> lines.add(
                                    new Line(stage, sort, item, item.item().asks() instanceof Ask.Recheck))));
        }
        return new RoadEvidence(lines);
    }

    private Optional<Sort> sort(CheckItem item) {
        return item.noConcession()
                .flatMap(RoadLook::sort)
                .or(() -> item.joint()
                        .flatMap(releases::joint)
                        .filter(joint -> joint.jointClass() == JointClass.A)
                        .map(joint -> Sort.CLASS_A));
    }

    private static Optional<Sort> sort(BeyondConcession beyond) {
        return switch (beyond) {
            case BRAKES -> Optional.of(Sort.BRAKES);
            case STEERING -> Optional.of(Sort.STEERING);
            case AXLE_LOADS, PROOF_OF_DEAD -> Optional.empty();
        };
    }
}

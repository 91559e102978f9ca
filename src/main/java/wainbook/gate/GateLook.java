package wainbook.gate;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.gate.specified.AsSpecified;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.CalibrationLook;
import wainbook.order.calibration.Comparison;
import wainbook.order.hold.StandingHolds;
import wainbook.order.specification.SpecificationLook;
import wainbook.station.StageRecord;
import wainbook.station.work.Workplace;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/** Brings together what a gate is judged from. */
@ApplicationScoped
public class GateLook {

    private final Ledger ledger;
    private final Workplace workplace;
    private final WorksDay day;
    private final SpecificationLook specifications;
    private final CalibrationLook calibrations;
    private final StandingHolds holds;

    GateLook(
            Ledger ledger,
            Workplace workplace,
            WorksDay day,
            SpecificationLook specifications,
            CalibrationLook calibrations,
            StandingHolds holds) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.day = day;
        this.specifications = specifications;
        this.calibrations = calibrations;
        this.holds = holds;
    }

    /** The rules of one gate for the person of the moment; refused when there is no such gate. */
    public Outcome<GateRules> at(History history, String stage, Moment moment) {
        return WorkOrder.of(history)
                .flatMap(order -> workplace
                        .record(history, order, stage)
                        .map(record -> new GateRules(
                                history,
                                order,
                                Gate.of(history, record),
                                Person.of(ledger.history(Subject.person(moment.who()))),
                                day.of(moment.at()),
                                specified(history, order, record),
                                holds.against(order, Stops.SIGN))))
                .map(Outcome::done)
                .orElseGet(() -> Outcome.refused(Reason.of(
                        "gate.notFound",
                        Reason.WORKS_RULE,
                        stage,
                        history.subject().code())));
    }

    private AsSpecified specified(History history, WorkOrder order, StageRecord record) {
        boolean last = order.ordered().stages().contains(record.stage())
                && order.stageAfter(record.stage()).isEmpty();
        return new AsSpecified(
                record,
                last,
                specifications.fitted(history),
                last ? calibrations.compared(history) : Comparison.none(order.number()));
    }
}

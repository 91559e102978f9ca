package wainbook.gate;

import jakarta.enterprise.context.ApplicationScoped;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.station.work.Workplace;
import wainbook.works.Person;
import wainbook.works.shift.WorksDay;

/** Brings together what a gate is judged from. */
@ApplicationScoped
public class GateLook {

    private final Ledger ledger;
    private final Workplace workplace;
    private final WorksDay day;

    GateLook(Ledger ledger, Workplace workplace, WorksDay day) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.day = day;
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
                                day.of(moment.at()))))
                .map(Outcome::done)
                .orElseGet(() -> Outcome.refused(Reason.of(
                        "gate.notFound",
                        Reason.WORKS_RULE,
                        stage,
                        history.subject().code())));
    }
}

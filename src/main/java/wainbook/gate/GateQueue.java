package wainbook.gate;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;

/** The gates of all vehicles that stand at a stage; those with nothing open first. */
@ApplicationScoped
class GateQueue {

    /** One gate in the queue. */
    public record Waiting(
            String order, String kind, String stage, String standing, int open, int items, Instant since) {
        public boolean ready() {
            return open == 0;
        }
    }

    private final Ledger ledger;
    private final GateLook look;

    GateQueue(Ledger ledger, GateLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    List<Waiting> now(Moment moment) {
        var waiting = new ArrayList<Waiting>();
        Stream.of(Phase.DONOR_RECEIVED, Phase.ON_LINE, Phase.OFF_LINE)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .filter(row -> row.stage != null)
                .forEach(row -> look.at(ledger.history(Subject.workOrder(row.number)), row.stage, moment)
                        .fold(rules -> waiting.add(waiting(row, rules)), reasons -> false));
        waiting.sort((one, other) -> Boolean.compare(other.ready(), one.ready()));
        return waiting;
    }

    private static Waiting waiting(WorkOrderRow row, GateRules rules) {
        return new Waiting(
                row.number,
                row.vehicleKind,
                row.stage,
                Words.of("gate.standing." + rules.gate().standing().name()),
                rules.gate().record().unsettled().size(),
                rules.gate().record().items().size(),
                row.since);
    }
}

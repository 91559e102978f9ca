package wainbook.gate;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Stage;

/** The gates of all vehicles that stand at a stage; those that can be signed first, signed ones last. */
@ApplicationScoped
class GateQueue {

    /** One gate in the queue. */
    public record Waiting(
            String order,
            String kind,
            String stage,
            String title,
            Gate.Standing stands,
            int open,
            int items,
            Instant since) {
        public boolean ready() {
            return open == 0 && !signed();
        }

        public boolean signed() {
            return stands == Gate.Standing.SIGNED;
        }

        public String standing() {
            return Words.of("gate.standing." + (ready() && stands == Gate.Standing.UNSIGNED ? "READY" : stands.name()));
        }

        private int rank() {
            return ready() ? 0 : signed() ? 2 : 1;
        }
    }

    private final Ledger ledger;
    private final GateLook look;
    private final Releases releases;

    GateQueue(Ledger ledger, GateLook look, Releases releases) {
        this.ledger = ledger;
        this.look = look;
        this.releases = releases;
    }

    List<Waiting> now(Moment moment) {
        var waiting = new ArrayList<Waiting>();
        Stream.of(Phase.DONOR_RECEIVED, Phase.ON_LINE, Phase.OFF_LINE)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .filter(row -> row.stage != null)
                .forEach(row -> look.at(ledger.history(Subject.workOrder(row.number)), row.stage, moment)
                        .fold(rules -> waiting.add(waiting(row, rules)), reasons -> false));
        waiting.sort(Comparator.comparingInt(Waiting::rank));
        return waiting;
    }

    private Waiting waiting(WorkOrderRow row, GateRules rules) {
        return new Waiting(
                row.number,
                row.vehicleKind,
                row.stage,
                releases.stage(row.stage).map(Stage::title).orElse(row.stage),
                rules.gate().standing(),
                rules.gate().record().unsettled().size(),
                rules.gate().record().items().size(),
                row.since);
    }
}

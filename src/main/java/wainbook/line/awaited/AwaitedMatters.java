package wainbook.line.awaited;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Parts that are awaited. They bar nothing by themselves: the items that need them stay open, and the gate with them. */
@ApplicationScoped
class AwaitedMatters implements Matters {

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;

    AwaitedMatters(Ledger ledger, Releases releases, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return Stream.of(
                        Phase.ORDERED,
                        Phase.DONOR_RECEIVED,
                        Phase.DONOR_ACCEPTED,
                        Phase.ON_LINE,
                        Phase.OFF_LINE,
                        Phase.FINISHED)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .flatMap(row -> AwaitedParts.of(ledger.history(Subject.workOrder(row.number))).open().stream()
                        .map(part -> matter(row.number, part, now)))
                .toList();
    }

    private OpenMatter matter(String order, AwaitedPart part, Instant now) {
        return new OpenMatter(
                Sort.PART,
                order,
                Words.of("line.awaitedMatter", part.number()),
                Optional.of(releases.stage(part.stage()).map(Stage::title).orElse(part.stage())),
                part.named(),
                part.since(),
                List.of(Owner.of(Role.LINE_MANAGER), Owner.of(Role.TEAM_LEADER), Owner.of(Role.WORKS_ENGINEER)),
                Due.on(part.expectedOn(), day.of(now)),
                "",
                AwaitedPart.path(order));
    }
}

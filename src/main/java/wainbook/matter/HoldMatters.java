package wainbook.matter;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.HoldInWords;
import wainbook.order.hold.Holding;
import wainbook.page.Words;

/** Holds in force. */
@ApplicationScoped
class HoldMatters implements Matters {

    private final Ledger ledger;

    HoldMatters(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return WorkOrderRow.withHolds().stream()
                .flatMap(row -> HoldInWords.inForce(ledger.history(Subject.workOrder(row.number))).stream()
                        .map(hold -> matter(row.number, hold)))
                .toList();
    }

    private static OpenMatter matter(String order, HoldInWords hold) {
        return new OpenMatter(
                Sort.HOLD,
                order,
                Words.of("matter.holdNumber", hold.hold(), hold.kind()),
                Optional.empty(),
                hold.reason(),
                hold.since(),
                Holding.mayRelease(hold.sort()).stream().sorted().map(Owner::of).toList(),
                Due.open(),
                hold.stops(),
                "/orders/" + order + "#holds");
    }
}

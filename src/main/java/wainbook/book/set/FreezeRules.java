package wainbook.book.set;

import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.book.Volume;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/** Whether a set may be frozen: once for a vehicle that left, and again only when there is more to tell. */
public final class FreezeRules {

    private FreezeRules() {}

    public static List<Reason> against(History history) {
        Optional<WorkOrder> order = WorkOrder.of(history);
        if (order.filter(known -> known.phase() == Phase.HANDED_OVER).isEmpty()) {
            return List.of(Reason.of("book.setTooEarly", Reason.WORKS_RULE)
                    .liftedAt("/handover/" + history.subject().code()));
        }
        return Volume.last(history)
                .filter(last -> Volume.since(history) == 0)
                .map(last -> List.of(Reason.of(
                        "book.setFrozenAlready", Reason.WORKS_RULE, last.said().volume())))
                .orElse(List.of());
    }
}

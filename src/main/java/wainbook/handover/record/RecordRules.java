package wainbook.handover.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.document.DocumentSet;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;

/**
 * What a handover record still wants, and whether its receipt counts. All of it is common practice; no law is known that
 * prescribes a handover record.
 */
public record RecordRules(WorkOrder order, HandoverRecord record, Shown shown) {

    public static RecordRules of(History history, WorkOrder order, Optional<DocumentSet> documents) {
        HandoverRecord record = HandoverRecord.of(history);
        return new RecordRules(order, record, Shown.of(order, record, documents));
    }

    /** What stands against handing the vehicle over. */
    public List<Reason> against() {
        var against = new ArrayList<>(missing());
        receipt().ifPresent(against::add);
        return against;
    }

    /** What the record lacks, whatever its receipt. */
    public List<Reason> missing() {
        var missing = new ArrayList<Reason>();
        if (record.state().isEmpty()) {
            missing.add(Reason.of("handover.recordNoState", Reason.PRACTICE, order.number())
                    .liftedAt(path() + "#state"));
        }
        if (record.things().isEmpty()) {
            missing.add(Reason.of("handover.recordNoThings", Reason.PRACTICE, order.number())
                    .liftedAt(path() + "#things"));
        }
        if (record.instructions().isEmpty() && record.omitted().isEmpty()) {
            missing.add(Reason.of("handover.recordNoInstruction", Reason.PRACTICE, order.number())
                    .liftedAt(path() + "#instruction"));
        }
        if (record.warranty().isEmpty()) {
            missing.add(Reason.of("handover.recordNoWarranty", Reason.PRACTICE, order.number())
                    .liftedAt(path() + "#warranty"));
        }
        return missing;
    }

    private Optional<Reason> receipt() {
        Optional<Receipt> last = record.lastReceipt();
        if (last.isEmpty()) {
            return Optional.of(Reason.of("handover.recordNoReceipt", Reason.PRACTICE, order.number())
                    .liftedAt(path() + "/receipt"));
        }
        return last.filter(receipt -> !receipt.countsFor(shown))
                .map(receipt -> Reason.of(
                                "handover.recordReceiptStale",
                                Reason.WORKS_RULE,
                                receipt.number(),
                                receipt.changed(shown))
                        .liftedAt(path() + "/receipt"));
    }

    /** The receipt that stands for what is shown now; after handing over the last one, which was judged then. */
    public Optional<Receipt> counting() {
        return record.lastReceipt().filter(receipt -> handedOver() || receipt.countsFor(shown));
    }

    /** What stands against changing the record. */
    public List<Reason> closed() {
        if (handedOver()) {
            return List.of(Reason.of("handover.recordClosed", Reason.WORKS_RULE, order.number())
                    .liftedAt(path()));
        }
        return order.phase() == Phase.DONOR_REJECTED
                ? List.of(Reason.of("handover.recordRejected", Reason.WORKS_RULE, order.number())
                        .liftedAt("/orders/" + order.number()))
                : List.of();
    }

    /** What stands against a receipt, whoever signs. */
    public List<Reason> againstReceipt() {
        if (!closed().isEmpty()) {
            return closed();
        }
        var against = new ArrayList<>(missing());
        if (order.phase() != Phase.FINISHED) {
            against.add(
                    0,
                    Reason.of("handover.recordNotFinished", Reason.WORKS_RULE, order.number())
                            .liftedAt("/orders/" + order.number()));
        }
        return against;
    }

    public boolean handedOver() {
        return order.phase() == Phase.HANDED_OVER;
    }

    public String path() {
        return "/handover/" + order.number() + "/record";
    }
}

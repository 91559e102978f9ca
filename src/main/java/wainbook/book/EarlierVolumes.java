package wainbook.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;

/** The sets that were frozen under a vehicle’s former orders, the oldest first. */
public final class EarlierVolumes {

    /** A set, and the order it was frozen under. */
    public record Earlier(String order, Volume volume) {
        public String path() {
            return "/orders/" + order + "/book/volumes/" + volume.said().volume();
        }
    }

    private EarlierVolumes() {}

    public static List<Earlier> of(WorkOrder order, Ledger ledger) {
        var volumes = new ArrayList<Earlier>();
        Optional<String> former = order.earlierOrder();
        while (former.isPresent()) {
            String number = former.get();
            var history = ledger.history(Subject.workOrder(number));
            volumes.addAll(
                    0,
                    Volume.of(history).stream()
                            .map(volume -> new Earlier(number, volume))
                            .toList());
            former = WorkOrder.of(history).flatMap(WorkOrder::earlierOrder);
        }
        return volumes;
    }
}

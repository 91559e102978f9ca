package wainbook.order.hold;

import java.time.Instant;
import java.util.List;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.WorkOrder;

/**
 * A hold as pages tell of it.
 *
 * @param who the number of the person who put it on
 * @param releasedBy the roles that may release it
 */
public record HoldInWords(
        int hold,
        HoldKind sort,
        String kind,
        String stops,
        String reason,
        String who,
        Instant since,
        String releasedBy) {

    public static HoldInWords of(Entry entry) {
        Held held = (Held) entry.saying();
        return new HoldInWords(
                held.hold(),
                held.kindOfHold(),
                HoldChoices.word(held.kindOfHold()),
                HoldChoices.words(held.stops()),
                held.reason(),
                entry.moment().who(),
                entry.moment().at(),
                HoldChoices.releasedBy(held.kindOfHold()));
    }

    /** The holds in force on a work order, oldest first. */
    public static List<HoldInWords> inForce(History history) {
        List<Held> standing = WorkOrder.of(history).map(WorkOrder::holds).orElse(List.of());
        return history.saying(Held.class)
                .filter(entry -> standing.contains(entry.saying()))
                .map(HoldInWords::of)
                .toList();
    }
}

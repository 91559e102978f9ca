package wainbook.line.forecast.state;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.LineSaying.EntryOrderSet;

/**
 * An order of entry that a line manager set.
 *
 * @param orders empty where it was taken back
 * @param entry its number in the stream of the works
 * @param by the number of who set it
 */
public record SetOrder(List<String> orders, long entry, String by, Instant at) {

    public SetOrder {
        orders = List.copyOf(orders);
    }

    /** All that were ever set, the oldest first. */
    public static List<SetOrder> all(History works) {
        return works.saying(EntryOrderSet.class).map(SetOrder::of).toList();
    }

    private static SetOrder of(Entry entry) {
        return new SetOrder(
                ((EntryOrderSet) entry.saying()).orders(),
                entry.number(),
                entry.moment().who(),
                entry.moment().at());
    }

    /** The one in force at a time; empty where there was none, or it was taken back. */
    public static Optional<SetOrder> at(List<SetOrder> all, Instant time) {
        return all.stream()
                .filter(one -> !one.at().isAfter(time))
                .reduce((former, latter) -> latter)
                .filter(one -> !one.orders().isEmpty());
    }

    /** Those it does not name come after all that it names. */
    public int place(String order) {
        int place = orders.indexOf(order);
        return place < 0 ? orders.size() : place;
    }
}

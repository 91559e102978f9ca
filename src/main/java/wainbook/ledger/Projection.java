package wainbook.ledger;

import java.util.Optional;
import wainbook.act.Reason;

/**
 * Tables made from entries, so that lists can be asked for. A row is a function of one stream; all rows can be thrown
 * away and made again.
 */
public interface Projection {

    /** Takes the next entry of a stream into the tables, in the transaction that appends it. */
    void take(Entry entry);

    /** Empties the tables. */
    void forget();

    /**
     * The reason to give when a unique key of these tables says no, such as two vehicles at one station.
     *
     * @param constraint the key's name as in the migration, lower case
     */
    default Optional<Reason> clash(String constraint) {
        return Optional.empty();
    }
}

package wainbook.ledger;

import java.util.Optional;
import wainbook.act.Reason;

/**
 * Tables made from entries, so that lists can be asked for. A row is a function of one stream; all rows can be thrown
 * away and made again.
 */
public interface Projection {

    /**
     * Which tables, and which way of making their rows, from 1.
     *
     * @param tables a short name that stays
     */
    record Version(String tables, int number) {}

    /**
     * Set where the rows are made in another way than before: a works that is updated makes them again at its first start,
     * so that what was said long ago is found by the new way too.
     */
    default Optional<Version> version() {
        return Optional.empty();
    }

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

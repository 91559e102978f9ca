package wainbook.safety;

import java.util.UUID;
import java.util.function.Function;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;

/**
 * Writes what must not be refused. A second touch of the same form with other words, or now without a name, is no retry of
 * the first: it is kept as one more, under an id of its own, drawn by chance so that it leads back to nobody.
 */
public final class Surely {

    private static final String ANOTHER = "ledger.otherUnderSameId";
    private static final String MEANWHILE = "ledger.writtenMeanwhile";

    private Surely() {}

    public static Outcome<Entry> written(UUID id, Function<UUID, Outcome<Entry>> act) {
        Outcome<Entry> first = act.apply(id);
        if (refusedFor(ANOTHER, first)) {
            return act.apply(UUID.randomUUID());
        }
        return refusedFor(MEANWHILE, first) ? act.apply(id) : first;
    }

    private static boolean refusedFor(String key, Outcome<Entry> outcome) {
        return outcome.reasons().stream().map(Reason::key).anyMatch(key::equals);
    }
}

package wainbook.ledger;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernate.StatelessSession;

/**
 * Reads streams. What was read stays read, since entries never change: a stream asked for again costs one statement for
 * what was added since. What a transaction itself added is known to it alone until it commits.
 */
@ApplicationScoped
class Histories {

    /** The streams that a transaction holds locked and has added to, as they will be when it commits. */
    private record Added(Map<Subject, History> streams) {}

    private final StatelessSession session;
    private final Kinds kinds;
    private final TransactionSynchronizationRegistry transaction;
    private final Cache<Subject, History> read =
            Caffeine.newBuilder().maximumSize(2_000).build();

    Histories(StatelessSession session, Kinds kinds, TransactionSynchronizationRegistry transaction) {
        this.session = session;
        this.kinds = kinds;
        this.transaction = transaction;
    }

    History of(Subject subject) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> Optional.ofNullable(added().streams().get(subject)).orElseGet(() -> stored(subject)));
    }

    /** What the running transaction adds to a stream that it holds locked, and had read before as {@code former}. */
    void adds(Entry entry, History former) {
        History longer = added().streams().getOrDefault(entry.subject(), former).and(entry);
        added().streams().put(entry.subject(), longer);
    }

    private Added added() {
        var added = (Added) transaction.getResource(Added.class);
        if (added == null) {
            added = new Added(new HashMap<>());
            transaction.putResource(Added.class, added);
        }
        return added;
    }

    private History stored(Subject subject) {
        History known = Optional.ofNullable(read.getIfPresent(subject)).orElseGet(() -> History.empty(subject));
        History longer = longer(known, subject);
        if (longer.number() > known.number()) {
            read.put(subject, longer);
        }
        return longer;
    }

    private History longer(History known, Subject subject) {
        List<EntryRow> added = session.createSelectionQuery(
                        "from EntryRow where stream = :stream and number > :number order by number", EntryRow.class)
                .setParameter("stream", subject.stream())
                .setParameter("number", known.number())
                .getResultList();
        if (added.isEmpty()) {
            return known;
        }
        return known.and(added.stream()
                .map(row -> Said.parse(row.said).entry(row.hash, kinds))
                .toList());
    }

    void forget() {
        read.invalidateAll();
    }
}

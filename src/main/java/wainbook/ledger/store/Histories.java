package wainbook.ledger.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hibernate.StatelessSession;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Kinds;
import wainbook.ledger.Subject;
import wainbook.ledger.bytes.Said;

/**
 * Reads streams. What was read stays read, since entries never change: a stream asked for again costs one statement for
 * what was added since. What a transaction itself added is known to it alone until it commits.
 */
@ApplicationScoped
public class Histories {

    /**
     * What a transaction need not read again: the streams that it holds locked and has added to, as they will be when it
     * commits; or, while a page is drawn and while acts are done together, every stream that was asked for.
     */
    private record Known(Map<Subject, History> streams, boolean keepsAll) {}

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

    public History of(Subject subject) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            Known known = known();
            History found = Optional.ofNullable(known.streams().get(subject)).orElseGet(() -> stored(subject));
            if (known.keepsAll()) {
                known.streams().put(subject, found);
            }
            return found;
        });
    }

    /** A stream that {@code draw} asks for again is not looked up again. Nothing may be written meanwhile. */
    public <T> T drawing(Supplier<T> draw) {
        return QuarkusTransaction.requiringNew().call(() -> {
            keepAll();
            return draw.get();
        });
    }

    /** To be called when a transaction begins that asks for the same streams often. */
    public void keepAll() {
        transaction.putResource(Known.class, new Known(new HashMap<>(), true));
    }

    /** A stream whose end is held locked: what is known of it serves if it reaches up to that end. */
    public History upTo(StreamHead end, Subject subject) {
        return Optional.ofNullable(known().streams().get(subject))
                .or(() -> Optional.ofNullable(read.getIfPresent(subject)))
                .filter(history -> history.endsWith(end.lastHash))
                .orElseGet(() -> stored(subject));
    }

    /** What the running transaction adds to a stream that it holds locked, and had read before as {@code former}. */
    public void adds(Entry entry, History former) {
        History known = known().streams().getOrDefault(entry.subject(), former);
        History before = known.number() + 1 == entry.number() ? known : former;
        known().streams().put(entry.subject(), before.and(entry));
    }

    private Known known() {
        var known = (Known) transaction.getResource(Known.class);
        if (known == null) {
            known = new Known(new HashMap<>(), false);
            transaction.putResource(Known.class, known);
        }
        return known;
    }

    private History stored(Subject subject) {
        History known = Optional.ofNullable(read.getIfPresent(subject)).orElseGet(() -> History.empty(subject));
        History longer = longer(known, subject);
        if (longer.number() > known.number()) {
            read.put(subject, longer);
        }
        return longer;
    }

    public List<Subject> subjects(Subject.Sort sort) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> session.createSelectionQuery(
                                "select subject from StreamHead where subject like :sort order by subject",
                                String.class)
                        .setParameter("sort", sort.word() + "/%")
                        .getResultList())
                .stream()
                .map(Subject::parse)
                .toList();
    }

    public long length(Subject.Sort sort) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> session.createSelectionQuery(
                                "select coalesce(sum(lastNumber), 0) from StreamHead where subject like :sort",
                                Long.class)
                        .setParameter("sort", sort.word() + "/%")
                        .getSingleResult());
    }

    public long length() {
        return QuarkusTransaction.joiningExisting()
                .call(() -> session.createSelectionQuery(
                                "select coalesce(sum(lastNumber), 0) from StreamHead", Long.class)
                        .getSingleResult());
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
                .map(row -> Said.stored(row.said, row.hash, kinds))
                .toList());
    }

    public void forget() {
        read.invalidateAll();
    }
}

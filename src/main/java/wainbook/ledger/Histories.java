package wainbook.ledger;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.hibernate.StatelessSession;

/**
 * Reads streams. What was read stays read, since entries never change: a stream asked for again costs one statement for
 * what was added since. What a transaction reads after it appended is not kept, since the transaction may yet fail.
 */
@ApplicationScoped
class Histories {

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

    /** What a transaction has read and need not read again. */
    private record Drawn(Map<Subject, History> histories) {}

    /** A stream that {@code draw} asks for again is not looked up again. Nothing may be written meanwhile. */
    <T> T drawing(Supplier<T> draw) {
        return QuarkusTransaction.requiringNew().call(() -> {
            transaction.putResource(Drawn.class, new Drawn(new HashMap<>()));
            return draw.get();
        });
    }

    History of(Subject subject) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> transaction.getResource(Drawn.class) instanceof Drawn drawn
                        ? drawn.histories().computeIfAbsent(subject, this::read)
                        : read(subject));
    }

    private History read(Subject subject) {
        History known = Optional.ofNullable(read.getIfPresent(subject)).orElseGet(() -> History.empty(subject));
        History longer = longer(known, subject);
        if (longer.number() > known.number() && transaction.getResource(Histories.class) == null) {
            read.put(subject, longer);
        }
        return longer;
    }

    /** To be called by a transaction before it appends. */
    void keepNothingMore() {
        transaction.putResource(Histories.class, true);
    }

    /** What a transaction appended need not be read again by the tables that are made from it. */
    void appended(Reading reading, List<Entry> entries) {
        var longer = new HashMap<>(reading.histories());
        entries.forEach(entry -> longer.computeIfPresent(entry.subject(), (subject, history) -> history.and(entry)));
        transaction.putResource(Drawn.class, new Drawn(longer));
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
        var entries = new ArrayList<>(known.entries());
        added.forEach(row -> entries.add(Said.parse(row.said).entry(row.hash, kinds)));
        return new History(subject, entries);
    }

    void forget() {
        read.invalidateAll();
    }
}

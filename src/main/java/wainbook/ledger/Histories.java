package wainbook.ledger;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    History of(Subject subject) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            History known = Optional.ofNullable(read.getIfPresent(subject)).orElseGet(() -> History.empty(subject));
            History longer = longer(known, subject);
            if (longer.number() > known.number() && transaction.getResource(Histories.class) == null) {
                read.put(subject, longer);
            }
            return longer;
        });
    }

    List<Subject> subjects(Subject.Sort sort) {
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

    /** To be called by a transaction before it appends. */
    void keepNothingMore() {
        transaction.putResource(Histories.class, true);
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

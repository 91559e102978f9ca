package wainbook.ledger;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import org.hibernate.StatelessSession;

/**
 * Reads streams. What was read stays read, since entries never change: a stream asked for again costs one statement for
 * what was added since. Must be asked before an act appends, or an entry of a transaction that fails would be kept.
 */
@ApplicationScoped
class Histories {

    private final StatelessSession session;
    private final Kinds kinds;
    private final Cache<Subject, History> read =
            Caffeine.newBuilder().maximumSize(2_000).build();

    Histories(StatelessSession session, Kinds kinds) {
        this.session = session;
        this.kinds = kinds;
    }

    History of(Subject subject) {
        History known = read.get(subject, History::empty);
        List<EntryRow> added = QuarkusTransaction.joiningExisting()
                .call(() -> session.createSelectionQuery(
                                "from EntryRow where stream = :stream and number > :number order by number",
                                EntryRow.class)
                        .setParameter("stream", subject.stream())
                        .setParameter("number", known.number())
                        .getResultList());
        if (added.isEmpty()) {
            return known;
        }
        var entries = new ArrayList<>(known.entries());
        added.forEach(row -> entries.add(Said.parse(row.said).entry(row.hash, kinds)));
        var longer = new History(subject, entries);
        read.put(subject, longer);
        return longer;
    }

    void forget() {
        read.invalidateAll();
    }
}

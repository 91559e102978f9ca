package wainbook.ledger.stream;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.hibernate.StatelessSession;
import wainbook.ledger.Subject;
import wainbook.ledger.store.StreamHead;

/** The stored bytes of a stream, with where it ends. */
@ApplicationScoped
public class StoredStreams {

    private final StatelessSession session;

    StoredStreams(StatelessSession session) {
        this.session = session;
    }

    /** Empty when nothing was ever said of the subject. Head and lines are of one moment. */
    public Optional<StoredStream> of(Subject subject) {
        List<Object[]> joined = QuarkusTransaction.joiningExisting()
                .call(() -> session.createSelectionQuery(
                                "select head, row.said from StreamHead head join EntryRow row on row.stream = head.id"
                                        + " where head.id = :stream order by row.number",
                                Object[].class)
                        .setParameter("stream", subject.stream())
                        .getResultList());
        return joined.stream().findFirst().map(first -> {
            var head = (StreamHead) first[0];
            List<String> lines = joined.stream().map(row -> (String) row[1]).toList();
            return new StoredStream(subject, head.lastNumber, head.lastHash, head.lastAt, lines);
        });
    }
}

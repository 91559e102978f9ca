package wainbook.ledger;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.hibernate.StatelessSession;
import wainbook.ledger.Verification.End;
import wainbook.ledger.Verification.Stored;

/** Reads all that is stored, one stream at a time, and verifies it. */
@ApplicationScoped
public class Verify {

    /** Long enough for the whole record of a works; the default would end the reading of a large one. */
    private static final int TIMEOUT_S = 3600;

    private final StatelessSession session;
    private final Kinds kinds;

    Verify(StatelessSession session, Kinds kinds) {
        this.session = session;
        this.kinds = kinds;
    }

    public VerificationReport everything() {
        return QuarkusTransaction.requiringNew().timeout(TIMEOUT_S).call(() -> {
            var verification = new Verification();
            List<StreamHead> heads = session.createSelectionQuery("from StreamHead order by subject", StreamHead.class)
                    .getResultList();
            heads.forEach(head -> stream(verification, head));
            strays(verification);
            session.createSelectionQuery("select sha256 from EvidenceRow order by sha256", String.class)
                    .getResultList()
                    .forEach(sha256 -> {
                        EvidenceRow row = session.get(EvidenceRow.class, sha256);
                        verification.file(row.sha256, row.mediaType, row.sizeBytes, row.content);
                    });
            return verification.report(heads.size());
        });
    }

    private void stream(Verification verification, StreamHead head) {
        List<EntryRow> rows = session.createSelectionQuery(
                        "from EntryRow where stream = :stream order by number", EntryRow.class)
                .setParameter("stream", head.id)
                .getResultList();
        verification.stream(
                new End(head.id, head.subject, head.lastNumber, head.lastHash, head.lastAt),
                rows.stream()
                        .map(row -> new Stored(row.id, row.stream, row.number, row.kind, row.said, row.hash))
                        .toList());
        rows.stream()
                .filter(row -> kinds.type(row.kind).isEmpty())
                .forEach(row -> verification.find(
                        head.subject + " entry " + row.number, "kind " + row.kind + " is not known to this program"));
    }

    /** Foreign keys forbid it; who can write to the database can lift a foreign key. */
    private void strays(Verification verification) {
        session.createSelectionQuery(
                        "select id from EntryRow where stream not in (select id from StreamHead)", UUID.class)
                .getResultList()
                .forEach(id -> verification.find("entry " + id, "belongs to no stream"));
    }
}

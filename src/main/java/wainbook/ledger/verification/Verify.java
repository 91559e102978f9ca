package wainbook.ledger.verification;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.hibernate.StatelessSession;
import wainbook.ledger.Kinds;
import wainbook.ledger.evidence.EvidenceRow;
import wainbook.ledger.store.EntryRow;
import wainbook.ledger.store.StreamHead;
import wainbook.ledger.verification.Verification.End;
import wainbook.ledger.verification.Verification.Stored;

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
            List<UUID> streams = session.createSelectionQuery("select id from StreamHead order by subject", UUID.class)
                    .getResultList();
            streams.forEach(stream -> stream(verification, stream));
            strays(verification);
            session.createSelectionQuery("select sha256 from EvidenceRow order by sha256", String.class)
                    .getResultList()
                    .forEach(sha256 -> {
                        EvidenceRow row = session.get(EvidenceRow.class, sha256);
                        verification.file(row.sha256, row.mediaType, row.sizeBytes, row.content);
                    });
            return verification.report(streams.size());
        });
    }

    /** How much there is to read, told before anybody waits for it. */
    public Extent extent() {
        return QuarkusTransaction.joiningExisting()
                .call(() -> new Extent(count("StreamHead"), count("EntryRow"), count("EvidenceRow")));
    }

    /** So many streams, entries and files are stored. */
    public record Extent(long streams, long entries, long files) {}

    private long count(String table) {
        return session.createSelectionQuery("select count(*) from " + table, Long.class)
                .getSingleResult();
    }

    private void stream(Verification verification, UUID stream) {
        List<Object[]> joined = joined(stream);
        List<EntryRow> rows = joined.stream()
                .map(row -> (EntryRow) row[1])
                .filter(Objects::nonNull)
                .toList();
        List<Stored> stored = rows.stream()
                .map(row -> new Stored(row.id, row.stream, row.number, row.kind, row.said, row.hash))
                .toList();
        joined.stream().map(row -> (StreamHead) row[0]).findFirst().ifPresent(head -> {
            verification.stream(new End(head.id, head.subject, head.lastNumber, head.lastHash, head.lastAt), stored);
            rows.stream()
                    .filter(row -> kinds.type(row.kind).isEmpty())
                    .forEach(row -> verification.find(
                            head.subject + " entry " + row.number, Finding.What.KIND_UNKNOWN, row.kind));
        });
    }

    /** The end of a stream and its entries in one statement: in two, an entry written in between would be a finding. */
    private List<Object[]> joined(UUID stream) {
        return session.createSelectionQuery(
                        "select head, row from StreamHead head left join EntryRow row on row.stream = head.id"
                                + " where head.id = :stream order by row.number",
                        Object[].class)
                .setParameter("stream", stream)
                .getResultList();
    }

    /** Foreign keys forbid it; who can write to the database can lift a foreign key. */
    private void strays(Verification verification) {
        session.createSelectionQuery(
                        "select id from EntryRow where stream not in (select id from StreamHead)", UUID.class)
                .getResultList()
                .forEach(id -> verification.find("entry " + id, Finding.What.NO_STREAM));
    }
}

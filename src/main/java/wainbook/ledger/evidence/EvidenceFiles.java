package wainbook.ledger.evidence;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.hibernate.StatelessSession;

/** The files that entries point to. */
@ApplicationScoped
public class EvidenceFiles {

    private final StatelessSession session;

    EvidenceFiles(StatelessSession session) {
        this.session = session;
    }

    /** Keeps the bytes; the same bytes are kept once. */
    public EvidenceFile keep(byte[] content, String mediaType) {
        EvidenceFile file = EvidenceFile.of(content, mediaType);
        return QuarkusTransaction.joiningExisting().call(() -> {
            EvidenceRow kept = session.get(EvidenceRow.class, file.sha256());
            if (kept != null) {
                return new EvidenceFile(kept.sha256, kept.mediaType, kept.sizeBytes);
            }
            var row = new EvidenceRow();
            row.sha256 = file.sha256();
            row.mediaType = file.mediaType();
            row.sizeBytes = file.sizeBytes();
            row.content = content;
            session.insert(row);
            return file;
        });
    }

    /** What is known of a kept file. */
    public Optional<EvidenceFile> file(String sha256) {
        return row(sha256).map(row -> new EvidenceFile(row.sha256, row.mediaType, row.sizeBytes));
    }

    public Optional<byte[]> bytes(String sha256) {
        return row(sha256).map(row -> row.content);
    }

    private Optional<EvidenceRow> row(String sha256) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> Optional.ofNullable(session.get(EvidenceRow.class, sha256)));
    }
}

package wainbook.ledger.evidence;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A photograph or file, found by the SHA-256 of its bytes. */
@Entity
@Table(name = "evidence")
public class EvidenceRow {
    @Id
    public String sha256;

    public String mediaType;
    public long sizeBytes;
    public byte[] content;
}

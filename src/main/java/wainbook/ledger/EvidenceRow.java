package wainbook.ledger;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A photograph or file, found by the SHA-256 of its bytes. */
@Entity
@Table(name = "evidence")
class EvidenceRow {
    @Id
    String sha256;

    String mediaType;
    long sizeBytes;
    byte[] content;
}

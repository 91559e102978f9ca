package wainbook.ledger;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** Where a stream ends. Locked by whoever appends to it. */
@Entity
@Table(name = "stream")
class StreamHead {
    @Id
    UUID id;

    String subject;
    long lastNumber;
    String lastHash;
    Instant lastAt;
}

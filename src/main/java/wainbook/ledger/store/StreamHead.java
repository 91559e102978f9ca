package wainbook.ledger.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** Where a stream ends. Locked by whoever appends to it. */
@Entity
@Table(name = "stream")
public class StreamHead {
    @Id
    public UUID id;

    public String subject;
    public long lastNumber;
    public String lastHash;
    public Instant lastAt;
}

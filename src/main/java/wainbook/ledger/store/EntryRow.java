package wainbook.ledger.store;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** One entry as stored: the hashed text and the columns it is found by. */
@Entity
@Table(name = "entry")
public class EntryRow {
    @Id
    public UUID id;

    public UUID stream;
    public long number;
    public String kind;
    public String said;
    public String hash;
}

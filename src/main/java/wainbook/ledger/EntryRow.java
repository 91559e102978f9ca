package wainbook.ledger;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** One entry as stored: the hashed text and the columns it is found by. */
@Entity
@Table(name = "entry")
class EntryRow {
    @Id
    UUID id;

    UUID stream;
    long number;
    String kind;
    String said;
    String hash;
}

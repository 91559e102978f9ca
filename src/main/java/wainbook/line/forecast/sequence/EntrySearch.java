package wainbook.line.forecast.sequence;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A search for a better order of entry, as it stands. */
@Entity
@Table(name = "entry_search")
public class EntrySearch extends PanacheEntityBase {

    /** How a search stands. */
    public enum Standing {
        RUNNING,
        ENDED,
        CANCELLED,
        INTERRUPTED,
        FAILED
    }

    @Id
    public UUID id;

    public String askedBy;
    public Instant begun;
    public Instant ended;

    @Enumerated(EnumType.STRING)
    public Standing standing;

    @Column(columnDefinition = "text")
    public String outcome;

    public static Optional<EntrySearch> newest() {
        return find("order by begun desc").firstResultOptional();
    }

    /** The last one that came to something. */
    public static Optional<EntrySearch> lastWithOutcome() {
        return find("outcome is not null order by begun desc").firstResultOptional();
    }

    public static List<EntrySearch> running() {
        return list("standing", Standing.RUNNING);
    }
}

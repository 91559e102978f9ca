package wainbook.line.balance;

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

/** A search for a better balance, as it stands. */
@Entity
@Table(name = "balance_search")
public class BalanceSearch extends PanacheEntityBase {

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

    public String question;

    @Column(columnDefinition = "text")
    public String outcome;

    public static Optional<BalanceSearch> newest() {
        return find("order by begun desc").firstResultOptional();
    }

    public static List<BalanceSearch> running() {
        return list("standing", Standing.RUNNING);
    }
}

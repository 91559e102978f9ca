package wainbook.safety.stop;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A safety stop as lists read it; what it says is read from its stream. */
@Entity
@Table(name = "safety_stop")
public class StopRow extends PanacheEntityBase {
    /** {@code vehicle/number}; the vehicle as {@link wainbook.permit.Where} writes it. */
    @Id
    public String id;

    public String vehicle;
    public int number;
    public UUID entry;
    public String station;
    public Instant since;
    public boolean stillOpen;

    public static List<StopRow> open() {
        return list("stillOpen = true order by since, id");
    }

    public static List<StopRow> since(Instant from) {
        return list("since >= ?1 order by since desc, id", from);
    }

    static Optional<StopRow> ofEntry(UUID entry) {
        return find("entry", entry).firstResultOptional();
    }
}

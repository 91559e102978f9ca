package wainbook.line.milestone;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A milestone that an order reached. */
@Entity
@Table(name = "milestone")
public class MilestoneRow extends PanacheEntityBase {
    /** Order and milestone. */
    @Id
    public String id;

    public String workOrder;

    @Enumerated(EnumType.STRING)
    public Milestone milestone;

    public Instant reachedAt;
    public UUID entry;
    public long entryNumber;

    static String id(String order, Milestone milestone) {
        return order + "/" + milestone;
    }

    public static List<MilestoneRow> of(List<String> orders) {
        return orders.isEmpty() ? List.of() : list("workOrder in ?1", orders);
    }
}

package wainbook.matter.nonconformity;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.matter.MatterSaying;

/** A nonconformity that awaits its disposition, as lists read it. */
@Entity
@Table(name = "open_nonconformity")
public class OpenNonconformity extends PanacheEntityBase {
    /** The work order's number and its own, since it is numbered within the order. */
    @Id
    public String id;

    public String workOrder;
    public int number;
    public String stage;
    public String item;

    @Enumerated(EnumType.STRING)
    public MatterSaying.Cause cause;

    public String what;
    public String openedBy;
    public Instant since;

    public static String id(String workOrder, int number) {
        return workOrder + "/" + number;
    }

    public static List<OpenNonconformity> oldestFirst() {
        return list("order by since, id");
    }
}

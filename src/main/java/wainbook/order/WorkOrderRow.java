package wainbook.order;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A work order as lists read it. */
@Entity
@Table(name = "work_order")
public class WorkOrderRow extends PanacheEntityBase {
    @Id
    public String number;

    public String operator;
    public String vehicleKind;
    public String variant;
    public LocalDate promisedOn;

    @Enumerated(EnumType.STRING)
    public WorkOrder.Phase phase;

    public String stage;
    public String place;

    /** The station it takes up, so that no other vehicle can; null where several may stand. */
    public String occupies;

    public Instant since;
    public String vin;
    public String registration;
    public int holds;

    public static List<WorkOrderRow> all() {
        return list("order by number");
    }

    public static List<WorkOrderRow> inPhase(WorkOrder.Phase phase) {
        return list("phase = ?1 order by since", phase);
    }

    public static Optional<WorkOrderRow> occupant(String station) {
        return find("occupies", station).firstResultOptional();
    }
}

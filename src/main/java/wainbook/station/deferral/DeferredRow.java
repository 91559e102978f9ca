package wainbook.station.deferral;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;

/** Says that work of an order was once given to a later stage; whether it is done follows from the order's record. */
@Entity
@Table(name = "deferred_work")
public class DeferredRow extends PanacheEntityBase {
    @Id
    public UUID entryId;

    public String workOrder;

    /** Orders not handed over yet: nothing goes out with work undone. */
    static List<String> orders() {
        return getEntityManager()
                .createQuery(
                        "select distinct work.workOrder from DeferredRow work where not exists (select 1 from"
                                + " WorkOrderRow row where row.number = work.workOrder and row.phase = 'HANDED_OVER')",
                        String.class)
                .getResultList();
    }
}

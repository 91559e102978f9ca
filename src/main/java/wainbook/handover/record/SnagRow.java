package wainbook.handover.record;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** A vehicle with snags that are open. */
@Entity
@Table(name = "open_snags")
public class SnagRow extends PanacheEntityBase {
    @Id
    public String workOrder;

    public int snags;

    static List<String> orders() {
        return SnagRow.<SnagRow>list("order by workOrder").stream()
                .map(row -> row.workOrder)
                .toList();
    }
}

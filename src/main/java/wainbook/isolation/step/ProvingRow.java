package wainbook.isolation.step;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** Which tester a proof at a vehicle was begun with that is not closed; whether it still goes on, its isolation says. */
@Entity
@Table(name = "last_proof")
public class ProvingRow extends PanacheEntityBase {
    @Id
    public String workOrder;

    public String tester;

    static List<String> with(String tester) {
        return ProvingRow.<ProvingRow>list("tester = ?1", tester).stream()
                .map(row -> row.workOrder)
                .toList();
    }
}

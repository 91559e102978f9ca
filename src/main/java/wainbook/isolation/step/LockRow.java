package wainbook.isolation.step;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.Optional;

/** A lock that is on at a vehicle. A lock can hang at one vehicle only: its number is a unique key. */
@Entity
@Table(name = "lock_on")
public class LockRow extends PanacheEntityBase {
    @Id
    public String id;

    public String workOrder;
    public String lockNumber;

    static String id(String workOrder, String lockNumber) {
        return workOrder + "/" + lockNumber;
    }

    static List<String> elsewhere(String workOrder) {
        return LockRow.<LockRow>list("workOrder <> ?1", workOrder).stream()
                .map(row -> row.lockNumber)
                .toList();
    }

    /** The vehicle at which a lock hangs now. */
    public static Optional<String> at(String lockNumber) {
        return LockRow.<LockRow>find("lockNumber", lockNumber)
                .firstResultOptional()
                .map(row -> row.workOrder);
    }
}

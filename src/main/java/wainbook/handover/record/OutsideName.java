package wainbook.handover.record;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;

/** Name and firm of somebody of an operator, outside the ledger. A row that was deleted leaves the record whole. */
@Entity
@Table(name = "outside_name")
public class OutsideName extends PanacheEntityBase {
    @Id
    public String id;

    public String workOrder;
    public String fullName;
    public String firm;
    public String salt;

    /** By the entry that named them, and their place in it from 0. */
    static String id(UUID entry, int place) {
        return entry + "/" + place;
    }

    public static Optional<OutsideName> of(UUID entry, int place) {
        return findByIdOptional(id(entry, place));
    }
}

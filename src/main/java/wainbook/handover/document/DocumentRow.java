package wainbook.handover.document;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;

/** A document of a vehicle that was handed over, and whether anything was left to do about it by what was said of it. */
@Entity
@Table(name = "document_after_handover")
public class DocumentRow extends PanacheEntityBase {
    @Id
    public String id;

    public String workOrder;
    public boolean isOpen;

    static String id(String workOrder, String requirement) {
        return workOrder + "/" + requirement;
    }

    public static List<String> ordersWithOpen() {
        return getEntityManager()
                .createQuery("select distinct workOrder from DocumentRow where isOpen order by workOrder", String.class)
                .getResultList();
    }
}

package wainbook.waste;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import wainbook.process.stream.Fate;

/** A part that somebody is to get by a day. */
@Entity
@Table(name = "part_due")
public class DuePart extends PanacheEntityBase {
    @Id
    public String id;

    public String workOrder;
    public String thing;

    @Enumerated(EnumType.STRING)
    public Fate fate;

    public String party;
    public LocalDate dueOn;
    public Instant since;

    static String id(String order, String thing) {
        return order + "/" + thing;
    }

    public static List<DuePart> overdueOn(LocalDate today) {
        return list("dueOn < ?1 order by dueOn, id", today);
    }
}

package wainbook.quality.containment;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.Sort;

/** A containment as lists read it. */
@Entity
@Table(name = "containment")
public class ContainmentRow extends PanacheEntityBase {
    @Id
    public String code;

    /** The stream that it was opened in. */
    public String subject;

    @Enumerated(EnumType.STRING)
    public Sort sort;

    public String about;
    public String reason;
    public Instant openedAt;
    public boolean closed;
    public int vehicles;

    /** Open ones first, then the newest. */
    public static List<ContainmentRow> all() {
        return list("order by closed, openedAt desc, code");
    }

    static List<ContainmentRow> ofSubject(Subject subject) {
        return list("subject = ?1 order by openedAt", subject.toString());
    }
}

package wainbook.permit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** A permit as lists read it; what it says is read from its stream. */
@Entity
@Table(name = "work_permit")
public class PermitRow extends PanacheEntityBase {
    /** {@code vehicle/number}; the vehicle as {@link Where} writes it. */
    @Id
    public String id;

    public String vehicle;
    public int number;

    @Enumerated(EnumType.STRING)
    public Work sort;

    public Instant issuedAt;
    public boolean stillOpen;

    /** Open ones first, the longest open on top; then the newest. */
    public static List<PermitRow> open() {
        return list("stillOpen = true order by issuedAt, id");
    }

    public static List<PermitRow> latestOver(int most) {
        return PermitRow.<PermitRow>find("stillOpen = false order by issuedAt desc, id")
                .page(0, most)
                .list();
    }
}

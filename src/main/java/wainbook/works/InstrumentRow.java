package wainbook.works;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;

/** An instrument as lists read it. */
@Entity
@Table(name = "instrument")
public class InstrumentRow extends PanacheEntityBase {
    @Id
    public String code;

    public String kind;
    public String title;
    public LocalDate due;
    public boolean withdrawn;

    public static List<InstrumentRow> register() {
        return list("order by code");
    }

    public static List<InstrumentRow> ofKind(String kind) {
        return list("kind = ?1 order by code", kind);
    }
}

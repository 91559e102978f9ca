package wainbook.waste;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.waste.WasteSaying.Measure;

/** A container as lists read it. */
@Entity
@Table(name = "waste_container")
public class ContainerRow extends PanacheEntityBase {
    @Id
    public String label;

    public String code;
    public boolean hazardous;
    public String place;
    public BigDecimal capacity;

    @Enumerated(EnumType.STRING)
    public Measure measure;

    /** In what the capacity is counted in. */
    public BigDecimal filled;

    public BigDecimal massKg;
    public int vehicles;
    public Instant since;
    public int askAfterDays;
    public boolean isSealed;
    public Instant collectedAt;
    public String noteCode;
    public BigDecimal noteKg;
    public boolean isReturned;

    /** Those that stand here first, the fullest before others. */
    public static List<ContainerRow> all() {
        return list("order by case when collectedAt is null then 0 else 1 end, label");
    }

    public static List<ContainerRow> here() {
        return list("collectedAt is null order by label");
    }

    /** Where something of this code may still go in, the one begun first before others. */
    public static List<ContainerRow> openFor(String code) {
        return list("code = ?1 and isSealed = false and collectedAt is null order by since, label", code);
    }

    /** The one of this code that left last: its note says what the next may say too. */
    public static Optional<ContainerRow> leftLast(String code) {
        return find("code = ?1 and collectedAt is not null order by collectedAt desc, label", code)
                .firstResultOptional();
    }
}

package wainbook.station.determination;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.station.StationSaying.Determined;

/** A value that was determined, under the line of its sheet. */
@Entity
@Table(name = "determined_value")
public class DeterminedValue extends PanacheEntityBase {
    @Id
    public UUID entryId;

    public String workOrder;
    public String line;
    public String figure;
    public Instant at;

    /** None where the readings gave no value, or an instrument's ceiling, which is alike on every vehicle. */
    public static void keep(Entry entry, Determined said) {
        if (said.value().isEmpty() || said.openEnded()) {
            return;
        }
        var row = new DeterminedValue();
        row.entryId = entry.id();
        row.workOrder = entry.subject().code();
        row.line = said.about().line();
        row.figure = said.value().get().toPlainString();
        row.at = entry.moment().at();
        row.persist();
    }

    /** The last ones of other vehicles at the same line, newest first. */
    public static List<BigDecimal> lately(String line, String otherThanOrder, int most) {
        return DeterminedValue.<DeterminedValue>find(
                        "line = ?1 and workOrder <> ?2 order by at desc, entryId", line, otherThanOrder)
                .page(0, most)
                .list()
                .stream()
                .map(row -> new BigDecimal(row.figure))
                .toList();
    }
}

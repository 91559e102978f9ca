package wainbook.pack;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A pack as lists and other packs of its lot read it; what it says is read from its stream. */
@Entity
@Table(name = "pack")
public class PackRow extends PanacheEntityBase {
    @Id
    public String serial;

    public String packType;
    public String lot;
    public String place;
    public BigDecimal chargePercent;
    public Instant lookedAt;
    public boolean accepted;
    public boolean quarantined;
    public boolean setAside;
    public boolean holdsLot;
    public boolean alarmed;
    public boolean outsideWindow;
    public Instant nextWatch;
    public boolean gone;

    /** When it came to stand as it does: set aside, or looked at last. */
    public Instant since;

    public static List<PackRow> all() {
        return list("order by serial");
    }

    public static Optional<PackRow> known(String serial) {
        return findByIdOptional(serial);
    }

    /** Those that have not left the works by themselves. */
    public static List<PackRow> here() {
        return list("gone = false order by serial");
    }

    /** The other packs of a lot. */
    public static List<PackRow> ofLot(String lot, String besides) {
        return list("lot = ?1 and serial <> ?2 order by serial", lot, besides);
    }

    /** Another pack of this lot that holds it. */
    public static Optional<String> holding(String lot, String besides) {
        return find("lot = ?1 and serial <> ?2 and holdsLot = true order by serial", lot, besides)
                .<PackRow>firstResultOptional()
                .map(row -> row.serial);
    }

    /** The lots that some pack holds. */
    public static Set<String> heldLots() {
        var lots = new HashSet<String>();
        PackRow.<PackRow>list("holdsLot = true and lot is not null").forEach(row -> lots.add(row.lot));
        return lots;
    }
}

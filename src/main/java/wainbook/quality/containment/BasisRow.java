package wainbook.quality.containment;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.quality.QualitySaying.Window;

/** What an entry of a work order rests on, so that it is found when that turns out wrong. */
@Entity
@Table(name = "entry_basis")
class BasisRow extends PanacheEntityBase {

    private static final String ORDERED = " order by workOrder, entryNumber";

    @Id
    public UUID entryId;

    public String workOrder;
    public long entryNumber;
    public Instant at;
    public String person;
    public String instrument;
    public String provedOn;
    public String sheet;
    public Integer revision;
    public String item;
    public String competence;
    public String part;
    public String lot;

    static List<BasisRow> onInstrument(String code, Window window) {
        return list(
                "(instrument = ?1 or provedOn = ?1) and at >= ?2 and at <= ?3" + ORDERED,
                code,
                window.from(),
                window.to());
    }

    static List<BasisRow> onLot(String lot, Optional<String> part) {
        return part.isPresent()
                ? list("lot = ?1 and part = ?2" + ORDERED, lot, part.get())
                : list("lot = ?1" + ORDERED, lot);
    }

    static List<BasisRow> onRevision(String sheet, int revision, Optional<String> item) {
        return item.isPresent()
                ? list("sheet = ?1 and revision = ?2 and item = ?3" + ORDERED, sheet, revision, item.get())
                : list("sheet = ?1 and revision = ?2" + ORDERED, sheet, revision);
    }

    static List<BasisRow> onCompetence(String person, String competence, Window window) {
        return list(
                "person = ?1 and competence = ?2 and at >= ?3 and at <= ?4" + ORDERED,
                person,
                competence,
                window.from(),
                window.to());
    }

    static long usedAfter(String instrument, Instant from, Instant to) {
        return count("(instrument = ?1 or provedOn = ?1) and at > ?2 and at <= ?3", instrument, from, to);
    }
}

package wainbook.permit.paper;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import wainbook.ledger.Entry;
import wainbook.permit.PermitSaying.OnPaper;
import wainbook.permit.Where;

/** A permit on paper as lists read it; what it says is read from its stream. */
@Entity
@Table(name = "paper_permit")
public class PaperPermitRow extends PanacheEntityBase {
    /** {@code vehicle/form}. */
    @Id
    public String id;

    public String vehicle;
    public String form;
    public Instant issuedAt;
    public boolean stillOpen;

    public static void of(Entry entry, OnPaper paper) {
        String vehicle = Where.word(entry.subject());
        String id = vehicle + "/" + paper.form();
        PaperPermitRow row = PaperPermitRow.<PaperPermitRow>findByIdOptional(id).orElseGet(PaperPermitRow::new);
        row.id = id;
        row.vehicle = vehicle;
        row.form = paper.form();
        row.issuedAt = paper.written().issuedAt();
        row.stillOpen = paper.written().open();
        row.persist();
    }

    /** Open ones first, then the newest. */
    public static List<PaperPermitRow> latest(int most) {
        return PaperPermitRow.<PaperPermitRow>find("order by stillOpen desc, issuedAt desc, id")
                .page(0, most)
                .list();
    }
}

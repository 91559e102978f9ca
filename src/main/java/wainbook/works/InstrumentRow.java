package wainbook.works;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.List;
import wainbook.page.Formats;
import wainbook.page.Words;

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

    /** As it is chosen from a list: code, title, and until when it is good. */
    public String inWords() {
        return Words.of(
                withdrawn ? "works.instrumentInWordsWithdrawn" : "works.instrumentInWords",
                code,
                title,
                due == null ? "–" : Formats.date(due));
    }

    public static List<InstrumentRow> register() {
        return list("order by code");
    }

    public static List<InstrumentRow> ofKind(String kind) {
        return list("kind = ?1 order by code", kind);
    }
}

package wainbook.works.instruments;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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

    @Column(name = "certificate_due")
    public LocalDate certificateDue;

    @Column(name = "calibrated_on")
    public LocalDate calibratedOn;

    @Column(name = "first_issued")
    public LocalDate firstIssued;

    public LocalDate expires;

    /** Printed on protective gear. */
    @Column(name = "gear_size")
    public String gearSize;

    /** Number of the person who has it; absent while it lies in the tool store. */
    public String holder;

    public String place;

    @Column(name = "out_since")
    public Instant outSince;

    /** As it is chosen from a list: code, title, and until when it is good. */
    public String inWords() {
        return Words.of(
                withdrawn ? "works.instrumentInWordsWithdrawn" : "works.instrumentInWords",
                code,
                gearSize == null ? title : Words.of("works.instrumentOfSize", title, gearSize),
                due == null ? "–" : Formats.date(due));
    }

    public void judge() {
        due = new LastGoodDay(
                        kind,
                        Optional.ofNullable(certificateDue),
                        Optional.ofNullable(calibratedOn),
                        Optional.ofNullable(firstIssued),
                        Optional.ofNullable(expires))
                .day()
                .orElse(null);
    }

    public static List<InstrumentRow> register() {
        return list("order by code");
    }

    public static List<InstrumentRow> ofKind(String kind) {
        return list("kind = ?1 order by code", kind);
    }
}

package wainbook.quality.containment.basis;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Level;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.Window;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.determination.KnownResistor;
import wainbook.station.serial.PartSerial;

/** What an entry of a work order rests on, so that it is found when that turns out wrong. */
@Entity
@Table(name = "entry_basis")
public class BasisRow extends PanacheEntityBase {

    private static final int LONGEST = 120;

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

    /** Empty where an entry rests on nothing that can turn out wrong here. */
    public static Optional<BasisRow> of(Entry entry) {
        var row = new BasisRow();
        if (entry.subject().sort() == Subject.Sort.WORK_ORDER) {
            fill(row, entry.saying());
        }
        if (row.sheet == null && row.instrument == null && row.competence == null) {
            return Optional.empty();
        }
        row.entryId = entry.id();
        row.workOrder = entry.subject().code();
        row.entryNumber = entry.number();
        row.at = entry.moment().at();
        row.person = entry.moment().who();
        return Optional.of(row);
    }

    /** Whether the other leads to the same sheet, and to the same competence of the same person. */
    boolean isCoveredBy(BasisRow other) {
        return Objects.equals(sheet, other.sheet)
                && Objects.equals(revision, other.revision)
                && instrument == null
                && (competence == null || (competence.equals(other.competence) && person.equals(other.person)));
    }

    /** Whether it rests on what a containment is about. */
    public boolean restsOn(About about, Window window) {
        boolean within = !at.isBefore(window.from()) && !at.isAfter(window.to());
        return switch (about.sort()) {
            case INSTRUMENT ->
                within && (about.code().equals(instrument) || about.code().equals(provedOn));
            case LOT ->
                about.code().equals(lot)
                        && about.part().map(wanted -> wanted.equals(part)).orElse(true);
            case REVISION ->
                about.code().equals(sheet)
                        && about.revision().equals(Optional.ofNullable(revision))
                        && about.item().map(wanted -> wanted.equals(item)).orElse(true);
            case COMPETENCE ->
                within && about.code().equals(person) && about.competence().equals(Optional.ofNullable(competence));
        };
    }

    /** Work orders with entries that may rest on it. */
    public static List<String> orders(About about, Window window) {
        return switch (about.sort()) {
            case INSTRUMENT ->
                orders(
                        "(instrument = ?1 or provedOn = ?1) and at >= ?2 and at <= ?3",
                        about.code(),
                        window.from(),
                        window.to());
            case LOT ->
                Stream.concat(orders("lot = ?1", about.code()).stream(), PartSerial.ordersWith(about.code()).stream())
                        .distinct()
                        .sorted()
                        .toList();
            case REVISION ->
                orders(
                        "sheet = ?1 and revision = ?2",
                        about.code(),
                        about.revision().orElse(0));
            case COMPETENCE ->
                orders(
                        "person = ?1 and competence = ?2",
                        about.code(),
                        about.competence().orElse(""));
        };
    }

    private static List<String> orders(String where, Object... values) {
        var query = getEntityManager()
                .createQuery(
                        "select distinct workOrder from BasisRow where " + where + " order by workOrder", String.class);
        for (int i = 0; i < values.length; i++) {
            query.setParameter(i + 1, values[i]);
        }
        return query.getResultList();
    }

    private static void fill(BasisRow row, Saying saying) {
        if (saying instanceof Result said) {
            row.sheet = said.about().sheet();
            row.revision = said.about().revision();
            row.item = said.about().item();
            row.instrument = said.basis().used().map(used -> used.instrument()).orElse(null);
            row.competence = said.basis().held().map(Held::competence).orElse(null);
            row.provedOn = KnownResistor.named(said).orElse(null);
            lot(row, said);
        } else if (saying instanceof IsolationSaying said) {
            isolation(row, said);
        } else if (saying instanceof OnPaper said) {
            said.written().provedBefore().ifPresent(proved -> {
                row.instrument = proved.tester();
                row.provedOn = proved.source();
            });
            row.competence = FactsNow.COMPETENCE;
        } else if (saying instanceof SignedOff said) {
            row.competence = said.held().map(Held::competence).orElse(null);
        } else if (saying instanceof ReadingsDecided said) {
            row.instrument = said.recheck().flatMap(check -> check.instrument()).orElse(null);
        }
    }

    private static void lot(BasisRow row, Result said) {
        if (said instanceof LotUsed used) {
            row.part = used.part();
            row.lot = cut(used.lot());
        } else if (said instanceof SerialRead read) {
            row.part = read.part();
            row.lot = cut(read.serial());
        }
    }

    private static String cut(String text) {
        return text.substring(0, Math.min(text.length(), LONGEST));
    }

    private static void isolation(BasisRow row, IsolationSaying saying) {
        if (saying instanceof IsolationSaying.AtPoint said) {
            row.instrument = said.tester();
            row.competence = FactsNow.COMPETENCE;
        } else if (saying instanceof IsolationSaying.TesterProvedBefore said) {
            proved(row, said.proving());
        } else if (saying instanceof IsolationSaying.TesterProvedAfter said) {
            proved(row, said.proving());
        } else if (saying instanceof IsolationSaying.SanctionIssued said) {
            row.instrument = said.instrument().code();
            row.competence = FactsNow.COMPETENCE;
        } else if (saying instanceof IsolationSaying.LivePermitIssued said) {
            row.instrument = said.gloves().code();
            row.competence = FactsNow.COMPETENCE;
        } else if (level(saying).isPresent()) {
            row.competence = FactsNow.COMPETENCE;
        }
    }

    private static void proved(BasisRow row, IsolationSaying.Proving proving) {
        row.instrument = proving.tester().code();
        row.provedOn = proving.source().code();
        row.competence = FactsNow.COMPETENCE;
    }

    /** The competence that the step was allowed on. */
    private static Optional<Level> level(IsolationSaying saying) {
        if (saying instanceof IsolationSaying.Planned said) {
            return Optional.of(said.isolator());
        } else if (saying instanceof IsolationSaying.LockedOn said) {
            return Optional.of(said.owner());
        } else if (saying instanceof IsolationSaying.TakenOver said) {
            return Optional.of(said.isolator());
        } else if (saying instanceof IsolationSaying.ProofWitnessed said) {
            return Optional.of(said.witness());
        } else if (saying instanceof IsolationSaying.PermitIssued said) {
            return Optional.of(said.issuer());
        } else if (saying instanceof IsolationSaying.PaperRead said) {
            return Optional.of(said.reader());
        } else if (saying instanceof IsolationSaying.WorkResumed said) {
            return Optional.of(said.issuer());
        } else if (saying instanceof IsolationSaying.NoSourceDeclared said) {
            return Optional.of(said.declarer());
        }
        return saying instanceof IsolationSaying.Restored said ? Optional.of(said.isolator()) : Optional.empty();
    }
}

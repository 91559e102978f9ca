package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Level;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;

/** What each entry of a work order rests on. */
@ApplicationScoped
class BasisTables implements Projection {

    private static final int LONGEST = 120;

    @Override
    public void take(Entry entry) {
        if (entry.subject().sort() != Subject.Sort.WORK_ORDER) {
            return;
        }
        var row = new BasisRow();
        fill(row, entry.saying());
        if (row.sheet != null || row.instrument != null || row.competence != null) {
            row.entryId = entry.id();
            row.workOrder = entry.subject().code();
            row.entryNumber = entry.number();
            row.at = entry.moment().at();
            row.person = entry.moment().who();
            row.persist();
        }
    }

    private static void fill(BasisRow row, Saying saying) {
        if (saying instanceof Result said) {
            row.sheet = said.about().sheet();
            row.revision = said.about().revision();
            row.item = said.about().item();
            row.instrument = said.basis().used().map(used -> used.instrument()).orElse(null);
            row.competence = said.basis().held().map(Held::competence).orElse(null);
            lot(row, said);
        } else if (saying instanceof IsolationSaying said) {
            isolation(row, said);
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

    @Override
    public void forget() {
        BasisRow.deleteAll();
    }
}

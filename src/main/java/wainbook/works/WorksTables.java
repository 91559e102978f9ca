package wainbook.works;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.works.instruments.InstrumentRow;

/** People and instruments as lists read them. */
@ApplicationScoped
class WorksTables implements Projection {

    @Override
    public void take(Entry entry) {
        String code = entry.subject().code();
        if (entry.saying() instanceof WorksSaying.Engaged said) {
            PersonRow row = PersonRow.<PersonRow>findByIdOptional(code).orElseGet(PersonRow::new);
            row.number = code;
            row.roles = words(said.roles());
            row.persist();
        } else if (entry.saying() instanceof WorksSaying.RolesGiven said) {
            PersonRow.<PersonRow>findById(code).roles = words(said.roles());
        } else if (entry.saying() instanceof WorksSaying.Left) {
            PersonRow.<PersonRow>findById(code).hasLeft = true;
        } else if (entry.subject().sort() == Subject.Sort.INSTRUMENT) {
            instrument(entry, code);
        }
    }

    private static void instrument(Entry entry, String code) {
        InstrumentRow row = InstrumentRow.<InstrumentRow>findByIdOptional(code).orElseGet(InstrumentRow::new);
        if (entry.saying() instanceof WorksSaying.InstrumentRegistered said) {
            row.code = code;
            row.kind = said.kind();
            row.title = said.title();
            row.calibratedOn = null;
            row.certificateDue = null;
            row.withdrawn = false;
        } else if (row.code == null) {
            return;
        } else if (entry.saying() instanceof WorksSaying.Calibrated said) {
            calibrated(row, said);
        } else if (entry.saying() instanceof WorksSaying.InstrumentWithdrawn) {
            row.withdrawn = true;
        } else if (entry.saying() instanceof WorksSaying.GearDescribed said) {
            row.expires = said.expires().orElse(null);
            row.gearSize = said.size()
                    .map(size -> size.substring(0, Math.min(80, size.length())))
                    .orElse(null);
        } else if (entry.saying() instanceof WorksSaying.Issued said) {
            row.holder = said.to();
            row.place = said.place().orElse(null);
            row.outSince = entry.moment().at();
            row.firstIssued = row.firstIssued == null ? said.on() : row.firstIssued;
        } else if (entry.saying() instanceof WorksSaying.Returned) {
            row.holder = null;
            row.place = null;
            row.outSince = null;
        }
        row.judge();
        row.persist();
    }

    private static void calibrated(InstrumentRow row, WorksSaying.Calibrated said) {
        if (row.calibratedOn == null || !said.on().isBefore(row.calibratedOn)) {
            row.calibratedOn = said.on();
            row.certificateDue = said.due().orElse(null);
            row.withdrawn = false;
        }
    }

    @Override
    public void forget() {
        PersonRow.deleteAll();
        InstrumentRow.deleteAll();
    }

    private static String words(List<Role> roles) {
        return roles.stream().map(Role::word).collect(Collectors.joining(" "));
    }
}

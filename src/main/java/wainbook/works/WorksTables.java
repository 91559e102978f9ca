package wainbook.works;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;

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
        } else if (entry.saying() instanceof WorksSaying.InstrumentRegistered said) {
            InstrumentRow row =
                    InstrumentRow.<InstrumentRow>findByIdOptional(code).orElseGet(InstrumentRow::new);
            row.code = code;
            row.kind = said.kind();
            row.title = said.title();
            row.due = null;
            row.withdrawn = false;
            row.persist();
        } else if (entry.saying() instanceof WorksSaying.Calibrated said) {
            InstrumentRow row = InstrumentRow.findById(code);
            row.due = said.due().orElse(null);
            row.withdrawn = false;
        } else if (entry.saying() instanceof WorksSaying.InstrumentWithdrawn) {
            InstrumentRow.<InstrumentRow>findById(code).withdrawn = true;
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

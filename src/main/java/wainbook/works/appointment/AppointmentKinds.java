package wainbook.works.appointment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.works.WorksSaying.AppointmentsSet;

/** The appointments that every vehicle of this works has after the line, in their order. */
@ApplicationScoped
public class AppointmentKinds {

    private final Ledger ledger;

    AppointmentKinds(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<AppointmentKind> all() {
        return ledger.history(Subject.works())
                .last(AppointmentsSet.class)
                .map(AppointmentsSet::appointments)
                .orElse(List.of());
    }
}

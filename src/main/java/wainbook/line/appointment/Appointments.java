package wainbook.line.appointment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.line.LineSaying.AppointmentBooked;
import wainbook.works.appointment.AppointmentKind;

/** All appointments of one vehicle, in the works' order. */
public record Appointments(List<Appointment> all) {

    public Appointments {
        all = List.copyOf(all);
    }

    /** @param kinds those that the works has now; what was said of others stays on record and asks for nothing */
    public static Appointments of(History history, List<AppointmentKind> kinds) {
        Map<String, Appointment> standing = new LinkedHashMap<>();
        kinds.forEach(kind -> standing.put(kind.code(), Appointment.open(kind)));
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof AppointmentBooked said) {
                standing.computeIfPresent(said.appointment(), (code, one) -> one.bookedFor(said.on()));
            } else if (entry.saying() instanceof AppointmentAttended said) {
                standing.computeIfPresent(
                        said.appointment(),
                        (code, one) -> one.attended(
                                said.passed(), said.remark(), entry.moment().at()));
            }
        }
        return new Appointments(List.copyOf(standing.values()));
    }

    public Optional<Appointment> of(String code) {
        return all.stream().filter(one -> one.kind().code().equals(code)).findFirst();
    }

    /** The first that is not passed, counted from 0; as many as there are if all are. */
    public int next() {
        for (int i = 0; i < all.size(); i++) {
            if (!all.get(i).isPassed()) {
                return i;
            }
        }
        return all.size();
    }

    public boolean allPassed() {
        return next() == all.size();
    }
}

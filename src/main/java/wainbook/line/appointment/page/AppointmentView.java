package wainbook.line.appointment.page;

import java.util.List;
import java.util.Optional;
import wainbook.line.appointment.Appointment;
import wainbook.line.appointment.Appointments;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Filled;
import wainbook.page.Words;

/**
 * A vehicle's appointments as their page shows them.
 *
 * @param chosen the appointment whose forms are open; else those of the first that is not passed
 * @param filled its forms
 * @param changes whether this person books and notes
 */
public record AppointmentView(
        WorkOrder order, Appointments appointments, Optional<String> chosen, Filled filled, boolean changes) {

    /** One appointment; {@code books} and {@code attends}: its forms are open. */
    public record Row(Appointment standing, boolean canOpen, boolean books, boolean attends) {
        public String code() {
            return standing.kind().code();
        }

        /** It was not passed: the next thing is to book it again. */
        public boolean again() {
            return standing.failed() > 0 && standing.booked().isEmpty();
        }
    }

    public List<Row> rows() {
        return appointments.all().stream().map(this::row).toList();
    }

    private Row row(Appointment one) {
        boolean open = changes && !one.isPassed() && order.phase() != Phase.HANDED_OVER;
        boolean shown = open && one.kind().code().equals(shown());
        return new Row(one, open && !shown, shown, shown && order.phase() == Phase.FINISHED);
    }

    private String shown() {
        int next = appointments.next();
        return chosen.filter(code ->
                        appointments.of(code).filter(one -> !one.isPassed()).isPresent())
                .orElseGet(() -> appointments.allPassed()
                        ? ""
                        : appointments.all().get(next).kind().code());
    }

    public String title() {
        long open = appointments.all().stream().filter(one -> !one.isPassed()).count();
        return open == 0
                ? Words.of("line.appointmentsDone", order.number())
                : Words.of("line.appointmentsOpen", order.number(), open);
    }
}

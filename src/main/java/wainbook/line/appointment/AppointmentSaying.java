package wainbook.line.appointment;

import java.time.Instant;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of a vehicle's appointments after the line. */
public sealed interface AppointmentSaying extends Saying {

    /**
     * Agreed for a time. A later one of the same appointment takes its place.
     *
     * @param appointment its code in the works' list
     */
    @Kind("line.appointmentBooked/1")
    record AppointmentBooked(String appointment, Instant on) implements AppointmentSaying {}

    /** @param remark what was found; never empty where it was not passed */
    @Kind("line.appointmentAttended/1")
    record AppointmentAttended(String appointment, boolean passed, String remark) implements AppointmentSaying {}
}

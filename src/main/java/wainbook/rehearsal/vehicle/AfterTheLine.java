package wainbook.rehearsal.vehicle;

import wainbook.line.appointment.Attendance;
import wainbook.works.Role;
import wainbook.works.appointment.AppointmentKind;

/** What a vehicle has to pass once it has left the line: its release for the road, a drive, its appointments. */
record AfterTheLine(AtVehicle at) {

    /** Some are not passed at first, are put right and are seen again the same day. */
    void pass() {
        var road = new OnTheRoad(at);
        road.released();
        for (AppointmentKind kind : at.acts.appointments.all()) {
            at.pass(at.dice.between(10.0, 20.0));
            if (at.dice.between(0, 99) < kind.failsInHundred()) {
                attended(kind, false, "Brakes pull to one side, adjusted");
                at.pass(at.dice.between(15.0, 25.0));
            }
            attended(kind, true, "");
        }
        road.driven();
    }

    private void attended(AppointmentKind kind, boolean passed, String remark) {
        at.done(
                at.acts.attendance.attend(
                        new Attendance.ToAttend(at.dice.id(), at.order, kind.code(), passed, remark),
                        at.inOffice(at.crew.anyone(Role.HANDOVER_CLERK, at.dice))),
                kind.code());
    }
}

package wainbook.book.telling;

import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.line.LineSaying.AppointmentBooked;
import wainbook.page.Words;

/** How appointments after the line are told. */
final class LineTellings {

    private LineTellings() {}

    static void addTo(Tellings tellings) {
        tellings.on(
                AppointmentBooked.class,
                (said, names) ->
                        Told.of(Words.of("book.appointmentBooked", said.appointment(), names.time(said.on()))));
        tellings.on(
                AppointmentAttended.class,
                (said, names) -> Told.of(
                        Words.of(
                                said.passed() ? "book.appointmentPassed" : "book.appointmentFailed",
                                said.appointment()),
                        said.remark()));
    }
}

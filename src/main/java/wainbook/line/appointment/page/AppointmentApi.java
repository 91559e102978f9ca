package wainbook.line.appointment.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.appointment.Appointment;
import wainbook.line.appointment.Appointments;
import wainbook.line.appointment.Attendance;
import wainbook.line.appointment.Booking;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;
import wainbook.works.appointment.AppointmentKinds;

/** Appointments after the line for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/appointments")
public class AppointmentApi {

    /** @param on by ISO 8601 with its offset */
    public record Book(UUID id, Instant on) {}

    public record Attend(UUID id, boolean passed, String remark) {}

    private final Ledger ledger;
    private final AppointmentKinds kinds;
    private final Booking booking;
    private final Attendance attendance;
    private final SignedIn signedIn;

    AppointmentApi(Ledger ledger, AppointmentKinds kinds, Booking booking, Attendance attendance, SignedIn signedIn) {
        this.ledger = ledger;
        this.kinds = kinds;
        this.booking = booking;
        this.attendance = attendance;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Appointment> all(String order) {
        History history = ledger.history(Numbers.subject(order));
        return WorkOrder.of(history)
                .map(known -> Appointments.of(history, kinds.all()).all())
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("{appointment}/booked")
    @RolesAllowed({Role.handoverClerk, Role.lineManager})
    public Response book(String order, String appointment, Book asked) {
        return Receipt.of(
                booking.book(new Booking.ToBook(asked.id(), order, appointment, asked.on()), signedIn.actor()));
    }

    @POST
    @Path("{appointment}/attended")
    @RolesAllowed({Role.handoverClerk, Role.lineManager})
    public Response attend(String order, String appointment, Attend asked) {
        return Receipt.of(attendance.attend(
                new Attendance.ToAttend(asked.id(), order, appointment, asked.passed(), asked.remark()),
                signedIn.actor()));
    }
}

package wainbook.line.appointment.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.appointment.Appointments;
import wainbook.line.appointment.Attendance;
import wainbook.line.appointment.Booking;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;
import wainbook.works.appointment.AppointmentKinds;
import wainbook.works.shift.WorksDay;

/** What a vehicle still has to pass after the line. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/appointments")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class AppointmentPage {

    private final Ledger ledger;
    private final AppointmentKinds kinds;
    private final Booking booking;
    private final Attendance attendance;
    private final WorksDay day;
    private final SignedIn signedIn;

    AppointmentPage(
            Ledger ledger,
            AppointmentKinds kinds,
            Booking booking,
            Attendance attendance,
            WorksDay day,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.kinds = kinds;
        this.booking = booking;
        this.attendance = attendance;
        this.day = day;
        this.signedIn = signedIn;
    }

    /** @param open the appointment whose forms are open */
    @GET
    public TemplateInstance all(String order, @RestQuery Optional<String> open) {
        return draw(order, open, Filled.fresh());
    }

    @POST
    @Path("{appointment}/booked")
    @RolesAllowed({Role.handoverClerk, Role.lineManager})
    public Response book(String order, String appointment, @RestForm String id, @RestForm String on) {
        Filled filled = Filled.sent(id).with("on", on);
        Optional<Instant> time = time(filled.value("on"));
        if (time.isEmpty()) {
            return filled.wrong("on", "line.appointmentNoTime")
                    .again(again -> draw(order, Optional.of(appointment), again));
        }
        return filled.answer(
                booking.book(new Booking.ToBook(filled.id(), order, appointment, time.get()), signedIn.actor()),
                "/orders/" + order + "/appointments",
                again -> draw(order, Optional.of(appointment), again));
    }

    @POST
    @Path("{appointment}/attended")
    @RolesAllowed({Role.handoverClerk, Role.lineManager})
    public Response attend(
            String order, String appointment, @RestForm String id, @RestForm String remark, @RestForm String passed) {
        Filled filled = Filled.sent(id).with("remark", remark);
        var asked =
                new Attendance.ToAttend(filled.id(), order, appointment, "yes".equals(passed), filled.value("remark"));
        return filled.answer(
                attendance.attend(asked, signedIn.actor()),
                "/orders/" + order + "/appointments",
                again -> draw(order, Optional.of(appointment), again));
    }

    private TemplateInstance draw(String number, Optional<String> chosen, Filled filled) {
        History history = ledger.history(Numbers.subject(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        boolean changes = signedIn.is(Role.handoverClerk) || signedIn.is(Role.lineManager);
        return AppointmentPages.appointments(
                new AppointmentView(order, Appointments.of(history, kinds.all()), chosen, filled, changes));
    }

    /** By the works' clock; empty where it is no time. */
    private Optional<Instant> time(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text).atZone(day.zone()).toInstant());
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}

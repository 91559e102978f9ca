package wainbook.order.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.returning.Returning;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.process.Releases;
import wainbook.works.Role;

/** The form by which a vehicle that was handed over comes back. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/return")
@RolesAllowed({Role.worksEngineer, Role.lineManager, Role.qualityEngineer})
@Produces(MediaType.TEXT_HTML)
public class ReturnPage {

    private final Ledger ledger;
    private final Releases releases;
    private final Returning returning;
    private final SignedIn signedIn;

    ReturnPage(Ledger ledger, Releases releases, Returning returning, SignedIn signedIn) {
        this.ledger = ledger;
        this.releases = releases;
        this.returning = returning;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String order) {
        WorkOrder earlier = known(order);
        var against = returning.against(earlier);
        Filled fresh = Filled.fresh();
        return draw(
                against.isEmpty() ? fresh.with("operator", earlier.ordered().operator()) : fresh.against(against),
                earlier);
    }

    @POST
    public Response make(
            String order,
            @RestForm String id,
            @RestForm String number,
            @RestForm String route,
            @RestForm String operator,
            @RestForm String promisedOn,
            @RestForm String reason) {
        WorkOrder earlier = known(order);
        Filled filled = checked(Filled.sent(id)
                .with("number", number)
                .with("route", route)
                .with("operator", operator)
                .with("promisedOn", promisedOn)
                .with("reason", reason));
        if (!filled.right()) {
            return filled.again(again -> draw(again, earlier));
        }
        var asked = new Returning.ToReturn(
                filled.id(),
                filled.value("number"),
                order,
                filled.value("route"),
                filled.value("operator"),
                day(filled.value("promisedOn")).orElseThrow(),
                filled.value("reason"));
        return filled.answer(
                returning.order(asked, signedIn.actor()), "/orders/" + asked.number(), again -> draw(again, earlier));
    }

    private static Filled checked(Filled filled) {
        Filled checked =
                filled.value("number").matches(Numbers.FORM) ? filled : filled.wrong("number", "order.numberForm");
        return day(filled.value("promisedOn")).isPresent()
                ? checked
                : checked.wrong("promisedOn", "order.promisedMissing");
    }

    private TemplateInstance draw(Filled filled, WorkOrder earlier) {
        List<Option> routes = releases.routes().stream()
                .filter(route -> route.vehicleKind().equals(earlier.ordered().vehicleKind()))
                .map(route -> new Option(route.code(), route.title()))
                .toList();
        return OrderPages.comesBack(filled, earlier, routes);
    }

    private WorkOrder known(String order) {
        return WorkOrder.of(ledger.history(Numbers.subject(order))).orElseThrow(NotFoundException::new);
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }
}

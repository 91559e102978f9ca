package wainbook.order.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.returning.Returning;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The form by which a vehicle that was handed over comes back. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/return")
@RolesAllowed({Role.worksEngineer, Role.lineManager, Role.qualityEngineer})
@Produces(MediaType.TEXT_HTML)
public class ReturnPage {

    private final Ledger ledger;
    private final Returning returning;
    private final SignedIn signedIn;

    ReturnPage(Ledger ledger, Returning returning, SignedIn signedIn) {
        this.ledger = ledger;
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
    public Response make(String order, MultivaluedMap<String, String> sent) {
        WorkOrder earlier = known(order);
        SentForm form = SentForm.of(sent);
        LocalDate promisedOn = form.day("promisedOn");
        if (!form.text("number").matches(Numbers.FORM)) {
            form.wrong("number", "order.numberForm");
        }
        if (!form.right()) {
            return form.filled().again(again -> draw(again, earlier));
        }
        var asked = new Returning.ToReturn(
                form.filled().id(),
                form.text("number"),
                order,
                form.text("route"),
                form.text("operator"),
                promisedOn,
                form.text("reason"));
        return form.filled()
                .answer(
                        returning.order(asked, signedIn.actor()),
                        "/orders/" + asked.number(),
                        again -> draw(again, earlier));
    }

    private TemplateInstance draw(Filled filled, WorkOrder earlier) {
        List<Option> routes = returning.routes(earlier).stream()
                .map(route -> new Option(route.code(), route.title()))
                .toList();
        return OrderPages.comesBack(filled, earlier, routes);
    }

    private WorkOrder known(String order) {
        return WorkOrder.of(ledger.history(Numbers.subject(order))).orElseThrow(NotFoundException::new);
    }
}

package wainbook.station.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.station.rebinding.Rebinding;
import wainbook.works.Role;

/** Shows what a newer revision of the sheet would keep and open, and lets the vehicle's stage go on by it. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/rebinding")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed(Role.worksEngineer)
public class RebindingPage {

    private final Ledger ledger;
    private final Rebinding rebinding;
    private final SignedIn signedIn;

    RebindingPage(Ledger ledger, Rebinding rebinding, SignedIn signedIn) {
        this.ledger = ledger;
        this.rebinding = rebinding;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance newer(String order) {
        return draw(Filled.fresh(), known(order));
    }

    @POST
    public Response rebind(String order, @RestForm String id, @RestForm int revision, @RestForm long seen) {
        known(order);
        Filled filled = Filled.sent(id);
        var asked = new Rebinding.ToRebind(filled.id(), order, revision, Optional.of(seen));
        return filled.answer(
                rebinding.rebind(asked, signedIn.actor()), "/station/" + order, again -> draw(again, known(order)));
    }

    /** Drawn from the record as it stands, with the number up to which it was read. */
    private TemplateInstance draw(Filled filled, History history) {
        String order = history.subject().code();
        return rebinding
                .newer(history)
                .fold(
                        newer -> StationPages.rebinding(filled, order, history.number(), Optional.of(newer)),
                        reasons -> StationPages.rebinding(
                                filled.reasons().isEmpty() ? filled.against(reasons) : filled,
                                order,
                                history.number(),
                                Optional.empty()));
    }

    private History known(String order) {
        History history = ledger.history(Subject.workOrder(order));
        if (history.isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}

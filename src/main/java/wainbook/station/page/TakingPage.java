package wainbook.station.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Redirect;
import wainbook.station.taking.Taking;
import wainbook.works.Role;

/** The buttons of the station page that put one's name on an item, and take it off. */
@Path("/station/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class TakingPage {

    private final Taking taking;
    private final StationLook look;
    private final SignedIn signedIn;

    TakingPage(Taking taking, StationLook look, SignedIn signedIn) {
        this.taking = taking;
        this.look = look;
        this.signedIn = signedIn;
    }

    @POST
    @Path("{item}/taken")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response take(String order, String item, @RestForm String id) {
        var asked = new Taking.ToTake(Filled.sent(id).id(), order, item);
        return answer(order, item, taking.take(asked, signedIn.actor()));
    }

    @POST
    @Path("{item}/given-back")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response giveBack(String order, String item, @RestForm String id) {
        var asked = new Taking.ToGiveBack(Filled.sent(id).id(), order, item);
        return answer(order, item, taking.giveBack(asked, signedIn.actor()));
    }

    private Response answer(String order, String item, Outcome<Entry> outcome) {
        return outcome.fold(
                entry -> Redirect.to("/station/" + order + "?item=" + item), reasons -> shown(order, item, reasons));
    }

    private Response shown(String order, String item, List<Reason> reasons) {
        StationView view =
                look.at(order, StationLook.Chosen.item(item), Optional.empty(), reasons, Form.EMPTY, signedIn.now());
        return Response.status(Problem.status(reasons))
                .entity(StationPages.station(view))
                .build();
    }
}

package wainbook.station.page;

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
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.station.serial.StandingSerials.Serial;
import wainbook.station.serial.TakingOff;
import wainbook.works.Role;

/** The form by which a part that a vehicle came back with is recorded as off it. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/parts/off")
@RolesAllowed({Role.technician, Role.teamLeader, Role.qualityEngineer})
@Produces(MediaType.TEXT_HTML)
public class TakenOffPage {

    private final Ledger ledger;
    private final TakingOff takingOff;
    private final SignedIn signedIn;

    TakenOffPage(Ledger ledger, TakingOff takingOff, SignedIn signedIn) {
        this.ledger = ledger;
        this.takingOff = takingOff;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String order, @RestQuery String part, @RestQuery String serial) {
        var named = new Serial(String.valueOf(part), String.valueOf(serial));
        return StationPages.takenOff(
                Filled.fresh().against(TakingOff.against(known(order), order, named)), order, named);
    }

    @POST
    public Response takeOff(String order, MultivaluedMap<String, String> sent) {
        known(order);
        SentForm form = SentForm.of(sent);
        var named = new Serial(form.text("part"), form.text("serial"));
        var asked =
                new TakingOff.ToTakeOff(form.filled().id(), order, named.part(), named.number(), form.text("reason"));
        return form.filled()
                .answer(
                        takingOff.takeOff(asked, signedIn.actor()),
                        "/orders/" + order + "#fitted",
                        again -> StationPages.takenOff(again, order, named));
    }

    private History known(String order) {
        History history = ledger.history(Numbers.subject(order));
        if (history.isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}

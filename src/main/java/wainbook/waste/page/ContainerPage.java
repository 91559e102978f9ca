package wainbook.waste.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.waste.Labels;
import wainbook.waste.act.Closing;
import wainbook.waste.act.PuttingIn;
import wainbook.waste.act.Returning;
import wainbook.works.Role;

/** One container: what lies in it, its label, sealing it, its note, and what came back of it. */
@Path("/waste/containers/{label: " + Labels.FORM + "}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ContainerPage {

    private final WasteLook look;
    private final Closing closing;
    private final PuttingIn puttingIn;
    private final Returning returning;
    private final SignedIn signedIn;

    ContainerPage(WasteLook look, Closing closing, PuttingIn puttingIn, Returning returning, SignedIn signedIn) {
        this.look = look;
        this.closing = closing;
        this.puttingIn = puttingIn;
        this.returning = returning;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance one(String label) {
        return draw(label, Filled.fresh());
    }

    private TemplateInstance draw(String label, Filled filled) {
        boolean papers =
                signedIn.is(Role.handoverClerk) || signedIn.is(Role.lineManager) || signedIn.is(Role.teamLeader);
        boolean works = papers || signedIn.is(Role.technician) || signedIn.is(Role.worksEngineer);
        return WastePages.container(view(label, filled), works, papers);
    }

    private ContainerView view(String label, Filled filled) {
        return look.container(label, filled, signedIn.now().at());
    }

    @GET
    @Path("label")
    public TemplateInstance label(String label) {
        return WastePages.label(view(label, Filled.fresh()));
    }

    @GET
    @Path("note")
    public TemplateInstance note(String label) {
        ContainerView view = view(label, Filled.fresh());
        if (view.container().collected().isEmpty()) {
            throw new NotFoundException();
        }
        return WastePages.note(view);
    }

    @POST
    @Path("seal")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response seal(String label, @RestForm String id) {
        Filled filled = Filled.sent(id);
        return filled.answer(
                closing.seal(new Closing.ToSeal(filled.id(), label), signedIn.actor()),
                Labels.path(label),
                again -> draw(label, again));
    }

    @POST
    @Path("voiding")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response undo(
            String label,
            @RestForm String id,
            @RestForm String order,
            @RestForm String thing,
            @RestForm String reason) {
        Filled filled =
                Filled.sent(id).with("order", order).with("thing", thing).with("reason", reason);
        var asked = new PuttingIn.ToVoid(
                filled.id(), label, filled.value("order"), filled.value("thing"), filled.value("reason"));
        return filled.answer(puttingIn.undo(asked, signedIn.actor()), Labels.path(label), again -> draw(label, again));
    }

    @POST
    @Path("return")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.handoverClerk, Role.lineManager, Role.teamLeader})
    public Response came(String label, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Returning.ToReturn(
                form.filled().id(),
                label,
                form.day("on"),
                form.text("reference"),
                form.number("recycledKg"),
                form.number("energyKg"),
                form.number("disposedKg"));
        return form.right()
                ? form.filled()
                        .answer(
                                returning.note(asked, signedIn.actor()),
                                Labels.path(label),
                                again -> draw(label, again))
                : form.filled().again(again -> draw(label, again));
    }
}

package wainbook.waste.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.order.Numbers;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.process.stream.Fate;
import wainbook.waste.Labels;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.PuttingIn;
import wainbook.works.Role;

/** Everything taken out of one vehicle: what is not placed yet first, with the container it goes into. */
@Path("/orders/{order: " + Numbers.FORM + "}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class StripPage {

    private final WasteLook look;
    private final PuttingIn puttingIn;
    private final Deciding deciding;
    private final SignedIn signedIn;

    StripPage(WasteLook look, PuttingIn puttingIn, Deciding deciding, SignedIn signedIn) {
        this.look = look;
        this.puttingIn = puttingIn;
        this.deciding = deciding;
        this.signedIn = signedIn;
    }

    @GET
    @Path("strip")
    public TemplateInstance strip(String order) {
        return draw(order, Filled.fresh());
    }

    private TemplateInstance draw(String order, Filled filled) {
        return WastePages.strip(view(order, filled));
    }

    private StripView view(String order, Filled filled) {
        boolean may = signedIn.is(Role.technician)
                || signedIn.is(Role.teamLeader)
                || signedIn.is(Role.worksEngineer)
                || signedIn.is(Role.lineManager)
                || signedIn.is(Role.handoverClerk);
        return look.strip(order, filled, signedIn.now().at(), may);
    }

    @GET
    @Path("strip.csv")
    @Produces("text/csv")
    public Response csv(String order) {
        StripView view = view(order, Filled.fresh());
        return Csv.file(
                "strip-" + view.number(),
                Arrays.asList(Words.of("waste.stripCsvHeader").split(";")),
                view.all().stream().map(ThingLine::cells).toList());
    }

    @POST
    @Path("strip/{thing}/placing")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response put(String order, String thing, @RestForm String id, @RestForm String container) {
        Filled filled = Filled.sent(id).with("container", container);
        if (!Labels.fits(filled.value("container"))) {
            return filled.wrong("container", "page.choose").again(again -> draw(order, again));
        }
        return filled.answer(
                puttingIn.put(
                        new PuttingIn.ToPut(filled.id(), filled.value("container"), order, thing), signedIn.actor()),
                "/orders/" + order + "/strip",
                again -> draw(order, again));
    }

    /** Notes what no item of a sheet weighs. */
    @POST
    @Path("strip")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response note(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Deciding.ToNote(
                form.filled().id(),
                order,
                form.text("what"),
                form.text("code"),
                form.number("massKg"),
                form.one("fate", Fate.values()));
        return form.right()
                ? form.filled()
                        .answer(
                                deciding.note(asked, signedIn.actor()),
                                "/orders/" + order + "/strip",
                                again -> draw(order, again))
                : form.filled().again(again -> draw(order, again));
    }
}

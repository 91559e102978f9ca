package wainbook.waste.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.process.stream.Fate;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.act.Deciding;
import wainbook.works.Role;

/** One thing taken out of a vehicle: what becomes of it, whether it is fit, who got it. */
@Path("/orders/{order: " + Numbers.FORM + "}")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
public class ThingPage {

    private static final String THING = "strip/{thing}";

    private final WasteLook look;
    private final Deciding deciding;
    private final SignedIn signedIn;

    ThingPage(WasteLook look, Deciding deciding, SignedIn signedIn) {
        this.look = look;
        this.deciding = deciding;
        this.signedIn = signedIn;
    }

    @GET
    @Path(THING)
    public TemplateInstance one(String order, String thing) {
        ThingView view = view(order, thing, Filled.fresh());
        Filled filled = Filled.fresh().with("fate", view.thing().fate().name());
        for (Decided said : view.thing().said().decided().stream().toList()) {
            filled = filled.with("party", said.party().orElse(""))
                    .with("dueOn", said.dueOn().map(Object::toString).orElse(""))
                    .with("place", said.place().orElse(""))
                    .with("to", said.party().orElse(""));
        }
        return WastePages.thing(view(order, thing, filled));
    }

    private ThingView view(String order, String thing, Filled filled) {
        return look.thing(order, thing, filled, signedIn.now().at());
    }

    @POST
    @Path(THING)
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response decide(String order, String thing, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Deciding.ToDecide(
                form.filled().id(),
                order,
                thing,
                form.one("fate", Fate.values()),
                form.maybe("party"),
                form.maybe("dueOn").map(text -> form.day("dueOn")),
                form.maybe("place"),
                form.text("why"));
        return form.right()
                ? answer(order, thing, form, deciding.decide(asked, signedIn.actor()))
                : form.filled().again(again -> WastePages.thing(view(order, thing, again)));
    }

    @POST
    @Path(THING + "/test")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response test(String order, String thing, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        if (!form.text("fit").matches("yes|no")) {
            return form.filled()
                    .wrong("fit", "page.choose")
                    .again(again -> WastePages.thing(view(order, thing, again)));
        }
        return answer(
                order,
                thing,
                form,
                deciding.test(
                        new Deciding.ToTest(
                                form.filled().id(),
                                order,
                                thing,
                                form.text("fit").equals("yes"),
                                form.text("found")),
                        signedIn.actor()));
    }

    @POST
    @Path(THING + "/given")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response give(String order, String thing, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        return answer(
                order,
                thing,
                form,
                deciding.give(
                        new Deciding.ToGive(form.filled().id(), order, thing, form.text("to"), form.text("reference")),
                        signedIn.actor()));
    }

    private Response answer(String order, String thing, SentForm form, Outcome<Entry> outcome) {
        return form.filled()
                .answer(outcome, "/orders/" + order + "/strip", again -> WastePages.thing(view(order, thing, again)));
    }
}

package wainbook.paper.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.paper.PaperForm;
import wainbook.paper.Using;

/** One form: where it stands, and what can be said of it. */
@Path("/paper/" + FormPage.CODE)
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class FormPage {

    static final String CODE = "{form: (F-)?[0-9]{1,9}}";

    private final PaperLook look;
    private final Using using;
    private final SignedIn signedIn;

    FormPage(PaperLook look, Using using, SignedIn signedIn) {
        this.look = look;
        this.using = using;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String form) {
        return draw(look.known(form), Filled.fresh());
    }

    private TemplateInstance draw(PaperForm form, Filled filled) {
        return PaperPages.form(look.form(form, filled, signedIn.now()));
    }

    @POST
    @Path("in-use")
    public Response inUse(String form, @RestForm String id, @RestForm String vehicle) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id).with("vehicle", vehicle);
        if (!filled.value("vehicle").matches(Numbers.FORM)) {
            return filled.wrong("vehicle", "paper.vehicleMissing").again(again -> draw(known, again));
        }
        return filled.answer(
                using.note(new Using.ToNote(filled.id(), known.number(), filled.value("vehicle")), signedIn.actor()),
                "/paper/" + known.code(),
                again -> draw(known, again));
    }

    @POST
    @Path("not-in-use")
    public Response notInUse(String form, @RestForm String id, @RestForm String vehicle, @RestForm String reason) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id).with("vehicle", vehicle).with("reason", reason);
        Numbers.subject(filled.value("vehicle"));
        return filled.answer(
                using.end(
                        new Using.ToEnd(filled.id(), known.number(), filled.value("vehicle"), filled.value("reason")),
                        signedIn.actor()),
                "/paper/" + known.code(),
                again -> draw(known, again));
    }

    @POST
    @Path("spoiled")
    public Response spoiled(String form, @RestForm String id, @RestForm String reason) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id).with("reason", reason);
        return filled.answer(
                using.spoil(new Using.ToSpoil(filled.id(), known.number(), filled.value("reason")), signedIn.actor()),
                "/paper/" + known.code(),
                again -> draw(known, again));
    }
}

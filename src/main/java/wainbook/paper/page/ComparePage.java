package wainbook.paper.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.paper.Comparing;
import wainbook.paper.PaperForm;
import wainbook.paper.PaperSaying.Transcribed;

/** Photograph and transcription side by side, for the second person. */
@Path("/paper/" + FormPage.CODE)
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ComparePage {

    private final PaperLook look;
    private final Comparing comparing;
    private final SignedIn signedIn;

    ComparePage(PaperLook look, Comparing comparing, SignedIn signedIn) {
        this.look = look;
        this.comparing = comparing;
        this.signedIn = signedIn;
    }

    @GET
    @Path("comparison")
    public TemplateInstance compare(String form) {
        return draw(look.known(form), Filled.fresh());
    }

    private TemplateInstance draw(PaperForm form, Filled filled) {
        return PaperPages.compare(look.compare(form, filled, signedIn.now()));
    }

    @POST
    @Path("agreement")
    public Response agree(String form, @RestForm String id, @RestForm int transcription) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id);
        String vehicle = last(known).vehicle();
        return answer(
                known,
                filled,
                comparing.agree(
                        new Comparing.ToAgree(filled.id(), known.number(), transcription, vehicle), signedIn.actor()));
    }

    @POST
    @Path("sent-back")
    public Response sendBack(String form, @RestForm String id, @RestForm int transcription, @RestForm String reason) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id).with("reason", reason);
        return answer(
                known,
                filled,
                comparing.sendBack(
                        new Comparing.ToSendBack(filled.id(), known.number(), transcription, filled.value("reason")),
                        signedIn.actor()));
    }

    /** Where nothing waits any more, the form’s own page says why it was refused. */
    private Response answer(PaperForm form, Filled filled, Outcome<Entry> outcome) {
        return filled.answer(
                outcome,
                "/paper/" + form.code(),
                again -> form.waiting().isPresent()
                        ? draw(form, again)
                        : PaperPages.form(look.form(form, again, signedIn.now())));
    }

    private static Transcribed last(PaperForm form) {
        return form.last().map(entry -> (Transcribed) entry.saying()).orElseThrow(NotFoundException::new);
    }
}

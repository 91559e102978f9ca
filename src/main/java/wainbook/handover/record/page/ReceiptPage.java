package wainbook.handover.record.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.act.Receipting;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** What the operator's person is shown, and where they sign. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/record/receipt")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.handoverClerk, Role.teamLeader, Role.lineManager})
public class ReceiptPage {

    private final RecordDrawing drawing;
    private final Receipting receipting;
    private final SignedIn signedIn;

    ReceiptPage(RecordDrawing drawing, Receipting receipting, SignedIn signedIn) {
        this.drawing = drawing;
        this.receipting = receipting;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance receipt(String order) {
        return draw(order, Filled.fresh());
    }

    @POST
    public Response sign(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Receipting.ToSign(
                form.filled().id(),
                order,
                form.text("content"),
                form.text("name"),
                form.text("role"),
                form.text("firm"),
                form.one("manner", Manner.values()),
                form.text("strokes"),
                form.text("confirmed").equals("yes"));
        return form.right()
                ? form.filled()
                        .answer(receipting.sign(asked, signedIn.actor()), path(order), again -> draw(order, again))
                : form.filled().again(again -> draw(order, again));
    }

    @POST
    @Path("missing")
    public Response miss(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Receipting.ToMiss(
                form.filled().id(),
                order,
                form.text("content"),
                form.one("absence", Absence.values()),
                form.text("reason"),
                form.text("witness"),
                form.text("password"));
        return form.right()
                ? form.filled()
                        .answer(receipting.miss(asked, signedIn.actor()), path(order), again -> draw(order, again))
                : form.filled().again(again -> draw(order, again));
    }

    private TemplateInstance draw(String order, Filled filled) {
        return RecordPages.receipt(drawing.view(order, filled));
    }

    private static String path(String order) {
        return "/handover/" + order + "/record#receipt";
    }
}

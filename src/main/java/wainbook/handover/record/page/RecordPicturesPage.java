package wainbook.handover.record.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.handover.record.act.Condition;
import wainbook.handover.record.act.Snagging;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The forms of a handover record that come with a photograph: of its condition, and of a snag put right. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/record")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.technician, Role.teamLeader, Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
public class RecordPicturesPage {

    private final RecordDrawing drawing;
    private final Condition condition;
    private final Snagging snagging;
    private final Picture pictures;
    private final SignedIn signedIn;

    RecordPicturesPage(
            RecordDrawing drawing, Condition condition, Snagging snagging, Picture pictures, SignedIn signedIn) {
        this.drawing = drawing;
        this.condition = condition;
        this.snagging = snagging;
        this.pictures = pictures;
        this.signedIn = signedIn;
    }

    @POST
    @Path("pictures")
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    public Response picture(
            String order,
            @RestForm String id,
            @RestForm String form,
            @RestForm String picturePlace,
            @RestForm String remark,
            @RestForm String photographKept,
            @RestForm("photograph") FileUpload photograph) {
        Filled filled = pictures.kept(
                Filled.sent(id)
                        .with("form", form)
                        .with("picturePlace", picturePlace)
                        .with("remark", remark)
                        .with("photographKept", photographKept),
                "photograph",
                photograph);
        var asked = new Condition.ToPicture(
                filled.id(),
                order,
                filled.value("picturePlace"),
                filled.value("remark"),
                filled.value("photographKept"));
        return filled.right()
                ? filled.answer(
                        condition.picture(asked, signedIn.actor()),
                        RecordDrawing.path(order, "pictures"),
                        drawing.again(order))
                : filled.again(drawing.again(order));
    }

    @POST
    @Path("snags/{snag}/closing")
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    public Response close(
            String order,
            int snag,
            @RestForm String id,
            @RestForm String form,
            @RestForm String done,
            @RestForm String closingPhotographKept,
            @RestForm("closingPhotograph") FileUpload closingPhotograph) {
        Filled filled = pictures.kept(
                Filled.sent(id)
                        .with("form", form)
                        .with("done", done)
                        .with("closingPhotographKept", closingPhotographKept),
                "closingPhotograph",
                closingPhotograph);
        var asked = new Snagging.ToClose(
                filled.id(),
                order,
                snag,
                filled.value("done"),
                Optional.of(filled.value("closingPhotographKept")).filter(text -> !text.isEmpty()));
        return filled.right()
                ? filled.answer(
                        snagging.close(asked, signedIn.actor()),
                        RecordDrawing.path(order, "snags"),
                        drawing.again(order))
                : filled.again(drawing.again(order));
    }
}

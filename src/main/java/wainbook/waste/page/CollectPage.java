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
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.waste.Container;
import wainbook.waste.Labels;
import wainbook.waste.act.Collecting;
import wainbook.waste.note.Note;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The note by which a container leaves. What stood on the last one of its code is filled in; what is looked up on the day is not. */
@Path("/waste/containers/{label: " + Labels.FORM + "}/collection")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.handoverClerk, Role.lineManager, Role.teamLeader})
public class CollectPage {

    private final WasteLook look;
    private final Collecting collecting;
    private final WorksDay day;
    private final SignedIn signedIn;

    CollectPage(WasteLook look, Collecting collecting, WorksDay day, SignedIn signedIn) {
        this.look = look;
        this.collecting = collecting;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String label) {
        ContainerView view = view(label, Filled.fresh());
        Filled filled = look.leftLast(view.container().row().code())
                .flatMap(Container::collected)
                .map(said -> like(said.note()))
                .orElseGet(Filled::fresh);
        return draw(view(label, filled));
    }

    private static Filled like(Note note) {
        return Filled.fresh()
                .with("producer", note.producer())
                .with("sic", note.sic())
                .with("process", note.process())
                .with("components", note.components())
                .with("hazards", note.hazards())
                .with("packing", note.packing())
                .with("transport", note.transport())
                .with("carrier", note.carrier().name())
                .with("registration", note.carrier().number())
                .with("site", note.site().name())
                .with("permit", note.site().number());
    }

    private ContainerView view(String label, Filled filled) {
        return look.container(label, filled, signedIn.now().at());
    }

    private TemplateInstance draw(ContainerView view) {
        return WastePages.collect(
                view,
                collecting.against(Optional.of(view.container()), view.label()),
                Formats.date(day.of(signedIn.now().at())));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response collect(String label, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        Collecting.ToCollect asked = asked(label, form);
        return form.right()
                ? form.filled()
                        .answer(
                                collecting.collect(asked, signedIn.actor()),
                                Labels.path(label) + "/note",
                                again -> draw(view(label, again)))
                : form.filled().again(again -> draw(view(label, again)));
    }

    private static Collecting.ToCollect asked(String label, SentForm form) {
        return new Collecting.ToCollect(
                form.filled().id(),
                label,
                form.maybe("seen").filter(text -> text.matches("\\d{1,9}")).map(Long::valueOf),
                form.text("code"),
                form.text("producer"),
                form.text("sic"),
                form.text("process"),
                form.text("components"),
                form.text("hazards"),
                form.text("packing"),
                form.text("transport"),
                form.maybeNumber("weighbridgeKg"),
                form.maybe("weighbridge"),
                form.text("carrier"),
                form.text("registration"),
                form.day("registrationSeenOn"),
                form.text("vehicle"),
                form.text("site"),
                form.text("permit"),
                form.day("permitSeenOn"));
    }
}

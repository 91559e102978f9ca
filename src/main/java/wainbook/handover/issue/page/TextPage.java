package wainbook.handover.issue.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.handover.issue.Template;
import wainbook.handover.issue.Templates;
import wainbook.handover.issue.TextRelease;
import wainbook.order.WorkOrderRow;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The texts of the documents that the works issues, and changing them. */
@Path("/process/documents")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class TextPage {

    private static final int SHOWN = 40;

    private final Templates templates;
    private final TextRelease releasing;
    private final SignedIn signedIn;

    TextPage(Templates templates, TextRelease releasing, SignedIn signedIn) {
        this.templates = templates;
        this.releasing = releasing;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance all() {
        return IssuePages.texts(new TextList(templates.all()));
    }

    /** @param example the order whose figures fill it; the newest where none is named */
    @GET
    @Path("{document}")
    public TemplateInstance one(String document, @RestQuery Optional<String> example) {
        Template template = template(document);
        Filled filled = Filled.fresh()
                .with("text", template.text())
                .with(
                        "example",
                        example.orElseGet(() ->
                                orders().stream().findFirst().map(Option::value).orElse("")));
        return draw(template, filled);
    }

    /** Without {@code release} it is only tried. */
    @POST
    @Path("{document}")
    @RolesAllowed(Role.worksEngineer)
    public Response change(String document, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        Template template = template(document);
        if (form.maybe("release").isEmpty()) {
            return Response.ok(draw(template, form.filled())).build();
        }
        var asked = new TextRelease.ToRelease(
                form.filled().id(), document, form.whole("revision"), form.text("text"), form.text("example"));
        return form.filled()
                .answer(
                        releasing.release(asked, signedIn.actor()),
                        "/process/documents/" + document,
                        again -> draw(template, again));
    }

    private Template template(String document) {
        return templates.named(document).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance draw(Template template, Filled filled) {
        return releasing
                .tried(
                        filled.value("text"),
                        filled.value("example"),
                        signedIn.now().at())
                .fold(
                        html -> drawn(template, Optional.of(html), List.of(), filled),
                        broken -> drawn(template, Optional.empty(), broken, filled));
    }

    private TemplateInstance drawn(Template template, Optional<String> html, List<Reason> broken, Filled filled) {
        return IssuePages.text(new TextView(template, orders(), html, broken, signedIn.is(Role.worksEngineer), filled));
    }

    /** The newest first: they say what is asked for today. */
    private static List<Option> orders() {
        return WorkOrderRow.<WorkOrderRow>find("order by number desc").page(0, SHOWN).list().stream()
                .map(row -> new Option(row.number, row.number))
                .toList();
    }
}

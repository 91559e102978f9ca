package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.SignedIn;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.Revisions.Version;
import wainbook.works.Role;

/** One sheet, route or plan, or the joints, or the stages: as in force, as it was, and what a revision changed. */
@Path("/process")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class PaperPage {

    private final DraftLook look;
    private final SignedIn signedIn;

    PaperPage(DraftLook look, SignedIn signedIn) {
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    @Path("joints")
    public TemplateInstance joints() {
        return paper(About.Thing.JOINTS.word(), About.WHOLE_WORKS, Optional.empty());
    }

    @GET
    @Path("stages")
    public TemplateInstance stages() {
        return paper(About.Thing.STAGES.word(), About.WHOLE_WORKS, Optional.empty());
    }

    @GET
    @Path("{thing}/{called}")
    public TemplateInstance paper(String thing, String called, @RestQuery Optional<Integer> revision) {
        Revisions revisions = known(thing, called);
        Version version =
                revision.map(revisions::version).orElseGet(revisions::inForce).orElseThrow(NotFoundException::new);
        boolean mayDraft = signedIn.is(Role.worksEngineer) || signedIn.is(Role.qualityEngineer);
        return ProcessPages.paper(new PaperView(revisions, version, mayDraft));
    }

    @GET
    @Path("{thing}/{called}/changes")
    public TemplateInstance changes(
            String thing, String called, @RestQuery Optional<Integer> from, @RestQuery Optional<Integer> to) {
        Revisions revisions = known(thing, called);
        int latest = revisions.revision();
        Version next = revisions.version(to.orElse(latest)).orElseThrow(NotFoundException::new);
        Version former =
                revisions.version(from.orElse(Math.max(1, next.revision() - 1))).orElseThrow(NotFoundException::new);
        return ProcessPages.changes(new ChangesView(revisions, former, next));
    }

    private Revisions known(String thing, String called) {
        return About.of(thing, called)
                .map(look::revisions)
                .filter(Revisions::known)
                .orElseThrow(NotFoundException::new);
    }
}

package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
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
import wainbook.ledger.Ledger;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.DraftRules;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Drafting;
import wainbook.process.draft.Revisions;
import wainbook.works.Role;

/** A draft as a whole: begun from what is in force, proposed by its author, released by a second person, or dropped. */
@Path("/process/{thing}/{called}/draft")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
public class DraftPage {

    private final Ledger ledger;
    private final DraftLook look;
    private final Drafting drafting;
    private final SignedIn signedIn;

    DraftPage(Ledger ledger, DraftLook look, Drafting drafting, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.drafting = drafting;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance draft(String thing, String called) {
        return draw(Filled.fresh(), known(thing, called));
    }

    /** Begins with what is in force. */
    @POST
    public Response begin(String thing, String called, @RestForm String id) {
        Revisions revisions = known(thing, called).revisions();
        Drafted from = revisions.inForce().map(Revisions.Version::what).orElseThrow(NotFoundException::new);
        Filled filled = Filled.sent(id);
        return answer(
                filled,
                revisions.about(),
                drafting.keep(new Drafting.ToKeep(filled.id(), from, revisions.revision(), 0), signedIn.actor()));
    }

    /** Takes the draft as it is on to the revision that came into force meanwhile: what differs is then shown anew. */
    @POST
    @Path("base")
    public Response base(String thing, String called, @RestForm String id, @RestForm long seen) {
        Revisions revisions = known(thing, called).revisions();
        Drafted kept = revisions.draft().map(Revisions.Kept::what).orElseThrow(NotFoundException::new);
        Filled filled = Filled.sent(id);
        return answer(
                filled,
                revisions.about(),
                drafting.keep(new Drafting.ToKeep(filled.id(), kept, revisions.revision(), seen), signedIn.actor()));
    }

    @POST
    @Path("proposal")
    public Response propose(String thing, String called, @RestForm String id, @RestForm long seen) {
        About about = known(thing, called).revisions().about();
        Filled filled = Filled.sent(id);
        return answer(
                filled, about, drafting.propose(new Drafting.ToPropose(filled.id(), about, seen), signedIn.actor()));
    }

    @POST
    @Path("release")
    public Response release(
            String thing, String called, @RestForm String id, @RestForm long seen, @RestForm String password) {
        About about = known(thing, called).revisions().about();
        Filled filled = Filled.sent(id);
        var asked = new Drafting.ToRelease(filled.id(), about, seen, password == null ? "" : password);
        return filled.answer(
                drafting.release(asked, signedIn.actor()), about.path(), again -> draw(again, known(thing, called)));
    }

    @POST
    @Path("discard")
    public Response drop(String thing, String called, @RestForm String id, @RestForm long seen) {
        About about = known(thing, called).revisions().about();
        Filled filled = Filled.sent(id);
        return filled.answer(
                drafting.drop(new Drafting.ToDrop(filled.id(), about, seen), signedIn.actor()),
                "/process",
                again -> draw(again, known(thing, called)));
    }

    private Response answer(Filled filled, About about, Outcome<Entry> outcome) {
        return filled.answer(
                outcome,
                about.path() + "/draft",
                again -> draw(again, known(about.thing().word(), about.called())));
    }

    private static TemplateInstance draw(Filled filled, DraftRules rules) {
        return ProcessPages.draft(new DraftView(rules, filled));
    }

    private DraftRules known(String thing, String called) {
        return About.of(thing, called)
                .map(about -> look.rules(ledger.history(about.subject()), about, signedIn.now()))
                .filter(rules -> rules.revisions().known())
                .orElseThrow(NotFoundException::new);
    }
}

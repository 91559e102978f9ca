package wainbook.process.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.DraftRules;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Drafting;
import wainbook.process.draft.Revisions;
import wainbook.works.Role;

/** What the works has released, and the drafts of what comes next, for scripts. */
@Path("/api/v1/process/{thing}/{called}")
public class ProcessApi {

    /** A revision as a script reads it. */
    public record Released(int revision, String by, Instant at, Drafted what) {
        static Released of(Revisions.Version version) {
            return new Released(
                    version.revision(), version.moment().who(), version.moment().at(), version.what());
        }
    }

    /**
     * A draft as a script reads it.
     *
     * @param seen what the next act on it must name
     * @param faults what keeps it from release whoever asks
     */
    public record Kept(
            Drafted draft,
            int base,
            long seen,
            String by,
            Instant at,
            Optional<Instant> proposedAt,
            List<String> authors,
            List<Problem.Ground> faults) {}

    /** The whole draft as it shall stand; {@code seen} is 0 when there was none. */
    public record ToKeep(UUID id, Drafted draft, int base, long seen) {}

    /** An act on the draft as it was seen. */
    public record Act(UUID id, long seen) {}

    /** A release; the password is the second person's own, asked for again. */
    public record Release(UUID id, long seen, String password) {}

    private final Ledger ledger;
    private final DraftLook look;
    private final Drafting drafting;
    private final SignedIn signedIn;

    ProcessApi(Ledger ledger, DraftLook look, Drafting drafting, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.drafting = drafting;
        this.signedIn = signedIn;
    }

    /** What is in force. */
    @GET
    @Authenticated
    public Released inForce(String thing, String called) {
        return look.revisions(about(thing, called)).inForce().map(Released::of).orElseThrow(NotFoundException::new);
    }

    /** Every revision, oldest first. */
    @GET
    @Path("revisions")
    @Authenticated
    public List<Released> revisions(String thing, String called) {
        return look.revisions(about(thing, called)).versions().stream()
                .map(Released::of)
                .toList();
    }

    @GET
    @Path("draft")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Kept draft(String thing, String called) {
        About about = about(thing, called);
        DraftRules rules = look.rules(ledger.history(about.subject()), about, signedIn.now());
        Revisions.Kept kept = rules.revisions().draft().orElseThrow(NotFoundException::new);
        return new Kept(
                kept.what(),
                kept.base(),
                kept.number(),
                kept.moment().who(),
                kept.moment().at(),
                kept.proposed().map(Moment::at),
                rules.revisions().authors().stream().sorted().toList(),
                kept.what().faults(rules.surroundings()).stream()
                        .map(Problem.Ground::of)
                        .toList());
    }

    @PUT
    @Path("draft")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response keep(String thing, String called, ToKeep body) {
        About about = about(thing, called);
        if (!body.draft.about().equals(about)) {
            return Problem.of(List.of(Reason.of(
                                    "process.otherPaper",
                                    Reason.WORKS_RULE,
                                    body.draft.about().called(),
                                    called)
                            .liftedAt("#draft")))
                    .response();
        }
        return Receipt.of(
                drafting.keep(new Drafting.ToKeep(body.id, body.draft, body.base, body.seen), signedIn.actor()));
    }

    @POST
    @Path("draft/proposal")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response propose(String thing, String called, Act body) {
        return Receipt.of(
                drafting.propose(new Drafting.ToPropose(body.id, about(thing, called), body.seen), signedIn.actor()));
    }

    @POST
    @Path("draft/release")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response release(String thing, String called, Release body) {
        return Receipt.of(drafting.release(
                new Drafting.ToRelease(body.id, about(thing, called), body.seen, body.password), signedIn.actor()));
    }

    @POST
    @Path("draft/discard")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response drop(String thing, String called, Act body) {
        return Receipt.of(
                drafting.drop(new Drafting.ToDrop(body.id, about(thing, called), body.seen), signedIn.actor()));
    }

    private static About about(String thing, String called) {
        return About.of(thing, called).orElseThrow(NotFoundException::new);
    }
}

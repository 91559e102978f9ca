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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.process.Route;
import wainbook.process.draft.About;
import wainbook.process.draft.About.Thing;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Drafting;
import wainbook.process.draft.PlanDraft;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.RouteDraft;
import wainbook.process.draft.SheetDraft;
import wainbook.process.page.form.Typed;
import wainbook.process.sheet.CheckSheet;
import wainbook.works.Role;

/** Begins a new sheet, route or isolation plan as a copy of one that is in force, to be typed in. */
@Path("/process/{thing}/new")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
public class BeginPage {

    /** Taken by this page's own address. */
    private static final String RESERVED = "new";

    private final Papers papers;
    private final DraftLook look;
    private final Drafting drafting;
    private final SignedIn signedIn;

    BeginPage(Papers papers, DraftLook look, Drafting drafting, SignedIn signedIn) {
        this.papers = papers;
        this.look = look;
        this.drafting = drafting;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(String thing) {
        return draw(known(thing), Filled.fresh());
    }

    @POST
    public Response begin(
            String thing, @RestForm String id, @RestForm String code, @RestForm String title, @RestForm String model) {
        Thing sort = known(thing);
        var typed = new Typed(
                Filled.sent(id).with("code", code).with("title", title).with("model", model));
        String called = typed.code("code");
        String named = typed.text("title");
        Optional<Drafted> copied = About.of(thing, typed.filled().value("model"))
                .map(look::revisions)
                .flatMap(Revisions::inForce)
                .map(Revisions.Version::what);
        if (copied.isEmpty()) {
            typed.wrong("model", "process.fieldChoice");
        }
        About about = new About(sort, called);
        Optional<Revisions> there = Optional.of(look.revisions(about)).filter(Revisions::known);
        if (called.equals(RESERVED) || there.flatMap(Revisions::inForce).isPresent()) {
            typed.wrong("code", "process.codeTaken", called);
        }
        if (!typed.filled().right()) {
            return typed.filled().again(again -> draw(sort, again));
        }
        Drafted draft = copy(copied.orElseThrow(), called, named);
        Filled filled = typed.filled();
        return filled.answer(
                drafting.keep(new Drafting.ToKeep(filled.id(), draft, 0, 0), signedIn.actor()),
                about.path() + "/draft",
                again -> draw(sort, again));
    }

    private static Drafted copy(Drafted model, String called, String title) {
        if (model instanceof SheetDraft draft) {
            CheckSheet sheet = draft.sheet();
            return new SheetDraft(new CheckSheet(called, title, sheet.items(), sheet.stage()));
        }
        if (model instanceof RouteDraft draft) {
            Route route = draft.route();
            return new RouteDraft(new Route(called, title, route.legs(), route.vehicleKind(), route.intakeSheet()));
        }
        PlanDraft plan = (PlanDraft) model;
        return new PlanDraft(
                called,
                plan.code() + "-" + called,
                plan.sources(),
                plan.later(),
                plan.points(),
                plan.waitMinutes(),
                plan.maximumVolt(),
                plan.mayTravel(),
                plan.restoration());
    }

    private TemplateInstance draw(Thing thing, Filled filled) {
        List<Option> models = papers.all().stream()
                .filter(paper ->
                        paper.about().thing() == thing && paper.inForce().isPresent())
                .map(paper -> new Option(
                        paper.about().called(),
                        paper.about().called() + ", "
                                + paper.inForce().orElseThrow().what().title()))
                .toList();
        return ProcessPages.begin(new BeginView(thing, models, filled));
    }

    private static Thing known(String word) {
        return Arrays.stream(Thing.values())
                .filter(thing -> thing.word().equals(word) && !thing.single())
                .findFirst()
                .orElseThrow(NotFoundException::new);
    }
}

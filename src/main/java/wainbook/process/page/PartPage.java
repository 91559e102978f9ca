package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.ledger.Ledger;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.process.draft.About;
import wainbook.process.draft.DraftLook;
import wainbook.process.draft.DraftRules;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Drafting;
import wainbook.process.draft.Part;
import wainbook.process.draft.Revisions;
import wainbook.process.page.form.PartForm;
import wainbook.process.page.form.Typed;
import wainbook.works.Role;

/** Writes a draft part by part: each save keeps the whole draft anew. */
@Path("/process/{thing}/{called}/draft")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
public class PartPage {

    /** The button that shows the fields of another kind of ask, and keeps nothing. */
    private static final String REDRAW = "redraw";

    private record At(DraftRules rules, PartForm<?, ?> form) {
        Drafted draft() {
            return kept().what();
        }

        Revisions.Kept kept() {
            return rules.revisions().draft().orElseThrow();
        }

        Optional<Drafted> inForce() {
            return rules.revisions().inForce().map(Revisions.Version::what);
        }
    }

    private final Ledger ledger;
    private final DraftLook look;
    private final Drafting drafting;
    private final SignedIn signedIn;

    PartPage(Ledger ledger, DraftLook look, Drafting drafting, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.drafting = drafting;
        this.signedIn = signedIn;
    }

    @GET
    @Path("{group}")
    public TemplateInstance added(String thing, String called, String group) {
        At at = at(thing, called, group);
        if (!at.form.keep().adds()) {
            throw new NotFoundException();
        }
        return draw(at, Optional.empty(), at.rules.revisions().seen(), Filled.fresh());
    }

    @GET
    @Path("{group}/{key}")
    public TemplateInstance edited(String thing, String called, String group, String key) {
        At at = at(thing, called, group);
        Map<String, String> typed = at.form.typed(at.draft(), key).orElseThrow(NotFoundException::new);
        Filled filled = Filled.fresh();
        for (Map.Entry<String, String> field : typed.entrySet()) {
            filled = filled.with(field.getKey(), field.getValue());
        }
        return draw(at, Optional.of(key), at.rules.revisions().seen(), filled);
    }

    @POST
    @Path("{group}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(String thing, String called, String group, MultivaluedMap<String, String> sent) {
        return save(at(thing, called, group), Optional.empty(), sent);
    }

    @POST
    @Path("{group}/{key}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response edit(String thing, String called, String group, String key, MultivaluedMap<String, String> sent) {
        return save(at(thing, called, group), Optional.of(key), sent);
    }

    @POST
    @Path("{group}/{key}/place")
    public Response move(
            String thing,
            String called,
            String group,
            String key,
            @RestForm String id,
            @RestForm long seen,
            @RestForm String to) {
        At at = at(thing, called, group);
        return rearranged(at, at.form.moved(at.draft(), key, "up".equals(to)), Filled.sent(id), seen, anchor(at, key));
    }

    @POST
    @Path("{group}/{key}/removal")
    public Response remove(
            String thing, String called, String group, String key, @RestForm String id, @RestForm long seen) {
        At at = at(thing, called, group);
        Drafted rest = at.form.mayGo(at.draft(), at.inForce(), key) ? at.form.without(at.draft(), key) : at.draft();
        return rearranged(at, rest, Filled.sent(id), seen, "#" + at.form.group().word());
    }

    private Response save(At at, Optional<String> key, MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = filled.with(field, sent.getFirst(field));
        }
        long seen = number(filled.value("seen"));
        if (sent.containsKey(REDRAW)) {
            return Response.ok(draw(at, key, seen, filled)).build();
        }
        var typed = new Typed(filled);
        Drafted next = at.form.put(at.draft(), key, typed);
        if (!typed.filled().right()) {
            return typed.filled().again(again -> draw(at, key, seen, again));
        }
        return filled.answer(
                drafting.keep(new Drafting.ToKeep(filled.id(), next, at.kept().base(), seen), signedIn.actor()),
                draftPath(at) + anchor(at, at.form.keyTyped(next, key, filled)),
                again -> draw(at, key, seen, again));
    }

    private Response rearranged(At at, Drafted next, Filled filled, long seen, String anchor) {
        if (next.equals(at.draft())) {
            return Response.seeOther(URI.create(draftPath(at) + anchor)).build();
        }
        return filled.answer(
                drafting.keep(new Drafting.ToKeep(filled.id(), next, at.kept().base(), seen), signedIn.actor()),
                draftPath(at) + anchor,
                again -> ProcessPages.draft(new DraftView(at.rules, again)));
    }

    /** Where the part stands on the page of the draft, so that its writer comes back to it. */
    private static String anchor(At at, String key) {
        return "#" + at.form.group().word() + "-" + key;
    }

    private static String draftPath(At at) {
        return at.rules.revisions().about().path() + "/draft";
    }

    private static long number(String text) {
        return text.matches("\\d{1,18}") ? Long.parseLong(text) : -1;
    }

    private static TemplateInstance draw(At at, Optional<String> key, long seen, Filled filled) {
        return ProcessPages.part(new PartView(at.rules, at.form, key, seen, filled));
    }

    private At at(String thing, String called, String group) {
        About about = About.of(thing, called).orElseThrow(NotFoundException::new);
        DraftRules rules = look.rules(ledger.history(about.subject()), about, signedIn.now());
        if (rules.revisions().draft().isEmpty()) {
            throw new NotFoundException();
        }
        return Part.Group.of(group)
                .flatMap(known -> PartForm.of(about.thing(), known))
                .map(form -> new At(rules, form))
                .orElseThrow(NotFoundException::new);
    }
}

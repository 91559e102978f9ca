package wainbook.line.balance.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.line.balance.Acceptance;
import wainbook.line.balance.BalanceSearch;
import wainbook.line.balance.BalanceSearch.Standing;
import wainbook.line.balance.Proposal;
import wainbook.line.balance.Searching;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.ContentLook;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;
import wainbook.works.Role;

/** How the work stands against the takt, and the search for a better balance. */
@Path("/balance")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class BalancePage {

    /** A page with a running search is drawn again by itself. */
    private static final int LOOK_AGAIN_S = 2;

    private final ContentLook look;
    private final Searching searching;
    private final Acceptance acceptance;
    private final SignedIn signedIn;

    BalancePage(ContentLook look, Searching searching, Acceptance acceptance, SignedIn signedIn) {
        this.look = look;
        this.searching = searching;
        this.acceptance = acceptance;
        this.signedIn = signedIn;
    }

    @GET
    public Response balance() {
        Content content = look.now();
        BalanceView view = asBefore(content, Filled.fresh());
        Response.ResponseBuilder page = Response.ok(BalancePages.balance(view));
        return view.running() ? page.header("Refresh", LOOK_AGAIN_S).build() : page.build();
    }

    @GET
    @Path("balance.csv")
    @Produces("text/csv")
    public Response csv() {
        BalanceView view = view(look.now(), Filled.fresh(), List.of());
        return Csv.file("balance", view.header(), view.cells());
    }

    @POST
    @Path("search")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response search(MultivaluedMap<String, String> sent) {
        Content content = look.now();
        List<String> stays = AskedFor.staying(sent);
        Filled filled = AskedFor.checked(AskedFor.sent(sent, content), content, stays);
        if (!filled.right()) {
            return filled.again(again -> draw(content, again, stays));
        }
        return filled.answer(
                searching.begin(
                        filled.id(),
                        AskedFor.question(filled, content, stays),
                        signedIn.now().who()),
                "/balance#search",
                again -> draw(content, again, stays));
    }

    @POST
    @Path("search/{search}/cancel")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response cancel(UUID search) {
        searching.cancel(search);
        return Redirect.to("/balance#search");
    }

    @POST
    @Path("search/{search}/acceptance")
    @RolesAllowed(Role.worksEngineer)
    public Response accept(UUID search, @RestForm String id) {
        Proposal proposal = Optional.<BalanceSearch>ofNullable(BalanceSearch.findById(search))
                .filter(row -> row.standing != Standing.RUNNING)
                .flatMap(searching::proposal)
                .orElseThrow(NotFoundException::new);
        Content content = look.now();
        Filled filled = Filled.sent(id);
        return filled.answer(
                acceptance.accept(filled.id(), proposal, signedIn.actor()),
                "/process",
                again -> BalancePages.balance(asBefore(content, again)));
    }

    /** With the form as the newest search was asked. */
    private BalanceView asBefore(Content content, Filled filled) {
        Optional<Question> last = BalanceSearch.newest().map(searching::question);
        return view(
                content,
                AskedFor.preset(filled, content, last),
                last.map(Question::stagesThatStay).orElse(List.of()));
    }

    private TemplateInstance draw(Content content, Filled filled, List<String> stays) {
        return BalancePages.balance(view(content, filled, stays));
    }

    private BalanceView view(Content content, Filled filled, List<String> stays) {
        Optional<BalanceSearch> newest = BalanceSearch.newest();
        return new BalanceView(
                content,
                newest,
                newest.map(searching::question),
                newest.flatMap(searching::proposal),
                newest.flatMap(row -> searching.progress(row.id)),
                newest.map(row -> searching.seconds(row.id)).orElse(0.0),
                newest.filter(row -> searching.comparing(row.id)).isPresent(),
                filled,
                stays,
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                signedIn.is(Role.worksEngineer));
    }
}

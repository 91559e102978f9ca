package wainbook.line.forecast.sequence.page;

import io.quarkus.security.Authenticated;
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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.line.forecast.sequence.EntrySearch;
import wainbook.line.forecast.sequence.OrderOfEntry;
import wainbook.line.forecast.sequence.Proposal;
import wainbook.line.forecast.sequence.Sequencing;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Redirect;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** In which order the vehicles in front of the line should come onto it, and the search for that. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class SequencePage {

    /** A page with a running search is drawn again by itself. */
    private static final int LOOK_AGAIN_S = 2;

    private final Sequencing sequencing;
    private final OrderOfEntry orderOfEntry;
    private final WorksDay day;
    private final SignedIn signedIn;

    SequencePage(Sequencing sequencing, OrderOfEntry orderOfEntry, WorksDay day, SignedIn signedIn) {
        this.sequencing = sequencing;
        this.orderOfEntry = orderOfEntry;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("forecast/sequence")
    public Response sequence() {
        SequenceView view = view(Filled.fresh());
        Response.ResponseBuilder page = Response.ok(SequencePages.sequence(view));
        return view.running() ? page.header("Refresh", LOOK_AGAIN_S).build() : page.build();
    }

    @GET
    @Path("forecast/sequence.csv")
    @Produces("text/csv")
    public Response csv() {
        return Csv.file(
                "order-of-entry",
                Arrays.asList(Words.of("line.sequenceHeader").split(";")),
                view(Filled.fresh()).table().cells());
    }

    @POST
    @Path("forecast/sequence/searches")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response search(@RestForm String id) {
        Filled filled = Filled.sent(id);
        return filled.answer(
                sequencing.begin(filled.id(), signedIn.now().who()),
                "/forecast/sequence#search",
                again -> SequencePages.sequence(view(again)));
    }

    @POST
    @Path("forecast/sequence/searches/{search}/cancel")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response cancel(UUID search) {
        sequencing.cancel(search);
        return Redirect.to("/forecast/sequence#search");
    }

    /** What the search proposed is the order from now on. */
    @POST
    @Path("forecast/sequence/searches/{search}/setting")
    @RolesAllowed(Role.lineManager)
    public Response set(UUID search, @RestForm String id, @RestForm long replaces) {
        Proposal proposal = Optional.<EntrySearch>ofNullable(EntrySearch.findById(search))
                .flatMap(sequencing::proposal)
                .filter(Proposal::better)
                .orElseThrow(NotFoundException::new);
        return set(Filled.sent(id), replaces, proposal.order());
    }

    @POST
    @Path("forecast/sequence/order/taken-back")
    @RolesAllowed(Role.lineManager)
    public Response takeBack(@RestForm String id, @RestForm long replaces) {
        return set(Filled.sent(id), replaces, List.of());
    }

    private Response set(Filled filled, long replaces, List<String> orders) {
        return filled.answer(
                orderOfEntry.set(new OrderOfEntry.ToSet(filled.id(), replaces, orders), signedIn.actor()),
                "/forecast/sequence",
                again -> SequencePages.sequence(view(again)));
    }

    private SequenceView view(Filled filled) {
        Optional<EntrySearch> newest = EntrySearch.newest();
        Optional<EntrySearch> last = EntrySearch.lastWithOutcome();
        Optional<Proposal> proposal = last.flatMap(sequencing::proposal);
        return new SequenceView(
                sequencing.line(),
                newest,
                newest.flatMap(row -> sequencing.progress(row.id)),
                last.map(row -> row.id),
                proposal,
                proposal.map(sequencing::entriesSince).orElse(0L),
                orderOfEntry.last(),
                filled,
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                signedIn.is(Role.lineManager),
                new Formats(day.zone()));
    }
}

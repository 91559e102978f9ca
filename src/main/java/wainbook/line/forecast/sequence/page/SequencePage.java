package wainbook.line.forecast.sequence.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.line.forecast.sequence.EntrySearch;
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
    private final WorksDay day;
    private final SignedIn signedIn;

    SequencePage(Sequencing sequencing, WorksDay day, SignedIn signedIn) {
        this.sequencing = sequencing;
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
                view(Filled.fresh()).cells());
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

    private SequenceView view(Filled filled) {
        Optional<EntrySearch> newest = EntrySearch.newest();
        Optional<Proposal> proposal = EntrySearch.lastWithOutcome().flatMap(sequencing::proposal);
        return new SequenceView(
                sequencing.line(),
                newest,
                newest.flatMap(row -> sequencing.progress(row.id)),
                proposal,
                proposal.map(sequencing::entriesSince).orElse(0L),
                filled,
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                new Formats(day.zone()));
    }
}

package wainbook.line.balance.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import wainbook.engineering.balance.Progress;
import wainbook.line.balance.BalanceSearch;
import wainbook.line.balance.Proposal;
import wainbook.line.balance.Searching;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.ContentLook;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.works.Role;

/** The balance for scripts: the work content, the newest search, and beginning one. */
@Path("/api/v1/balance")
public class BalanceApi {

    /** The work content by stage, and the newest search. */
    public record Answer(
            Optional<Integer> taktMinutes, List<Content.KindShare> kinds, List<At> stages, Optional<Newest> search) {}

    /** A stage; its load is planned minutes of one vehicle at each of its stations in a cycle. */
    public record At(String stage, int number, int stations, double loadMinutes) {}

    /** A search as it stands. */
    public record Newest(
            UUID id,
            BalanceSearch.Standing standing,
            Instant begun,
            Optional<Instant> ended,
            Question question,
            Optional<Progress> progress,
            Optional<Proposal> proposal) {}

    /** A search to be. */
    public record Wanted(UUID id, Question question) {
        public Wanted {
            Objects.requireNonNull(id, "id");
            Objects.requireNonNull(question, "question");
        }
    }

    private final ContentLook look;
    private final Searching searching;
    private final SignedIn signedIn;

    BalanceApi(ContentLook look, Searching searching, SignedIn signedIn) {
        this.look = look;
        this.searching = searching;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer balance() {
        Content content = look.now();
        return new Answer(
                content.taktMinutes(),
                content.kinds(),
                content.stages().stream()
                        .map(place ->
                                new At(place.stage(), place.number(), place.stations(), content.load(place.stage())))
                        .toList(),
                BalanceSearch.newest().map(this::newest));
    }

    @POST
    @Path("searches")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response search(Wanted body) {
        return searching
                .begin(body.id, body.question, signedIn.now().who())
                .fold(
                        begun -> Response.accepted(balance()).build(),
                        already -> Response.ok(balance()).build(),
                        against -> Problem.of(against).response());
    }

    private Newest newest(BalanceSearch row) {
        return new Newest(
                row.id,
                row.standing,
                row.begun,
                Optional.ofNullable(row.ended),
                searching.question(row),
                searching.progress(row.id),
                searching.proposal(row));
    }
}

package wainbook.line.forecast.sequence.page;

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
import wainbook.engineering.flow.sequence.Progress;
import wainbook.line.forecast.sequence.EntrySearch;
import wainbook.line.forecast.sequence.EntrySearch.Standing;
import wainbook.line.forecast.sequence.OrderOfEntry;
import wainbook.line.forecast.sequence.Proposal;
import wainbook.line.forecast.sequence.Sequencing;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.SetOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** The order of entry for scripts: today's, the newest search, and beginning one. */
@Path("/api/v1/forecast/sequence")
public class SequenceApi {

    /** Who waits in front of the line, in today's order; the order that was set or taken back last; and the newest search. */
    public record Answer(List<String> today, Optional<SetOrder> lastSet, Optional<Newest> search) {}

    /** A search as it stands; {@code entriesSince} are those about vehicles since the line stood as it did. */
    public record Newest(
            UUID id,
            Standing standing,
            Instant begun,
            Optional<Instant> ended,
            Optional<Progress> progress,
            Optional<Proposal> proposal,
            Optional<Long> entriesSince) {}

    /** A search to be. */
    public record Wanted(UUID id) {
        public Wanted {
            Objects.requireNonNull(id, "id");
        }
    }

    private final Sequencing sequencing;
    private final OrderOfEntry orderOfEntry;
    private final SignedIn signedIn;

    SequenceApi(Sequencing sequencing, OrderOfEntry orderOfEntry, SignedIn signedIn) {
        this.sequencing = sequencing;
        this.orderOfEntry = orderOfEntry;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer sequence() {
        return new Answer(
                sequencing.line().waiting().stream().map(OnHand::order).toList(),
                orderOfEntry.last(),
                EntrySearch.newest().map(this::newest));
    }

    @POST
    @Path("searches")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response search(Wanted body) {
        return sequencing
                .begin(body.id, signedIn.now().who())
                .fold(
                        begun -> Response.accepted(sequence()).build(),
                        already -> Response.ok(sequence()).build(),
                        against -> Problem.of(against).response());
    }

    @POST
    @Path("searches/{search}/cancel")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Answer cancel(UUID search) {
        sequencing.cancel(search);
        return sequence();
    }

    /** @param asked no orders take back what is set */
    @POST
    @Path("order")
    @RolesAllowed(Role.lineManager)
    public Response set(OrderOfEntry.ToSet asked) {
        return Receipt.of(orderOfEntry.set(asked, signedIn.actor()));
    }

    private Newest newest(EntrySearch row) {
        Optional<Proposal> proposal = sequencing.proposal(row);
        return new Newest(
                row.id,
                row.standing,
                row.begun,
                Optional.ofNullable(row.ended),
                sequencing.progress(row.id),
                proposal,
                proposal.map(sequencing::entriesSince));
    }
}

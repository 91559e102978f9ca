package wainbook.permit.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.permit.Permit;
import wainbook.permit.PermitSaying.PermitIssued;
import wainbook.permit.PermitSaying.Ticked;
import wainbook.permit.Permitting;
import wainbook.permit.State;
import wainbook.permit.Step;
import wainbook.permit.Trait;
import wainbook.permit.Where;
import wainbook.permit.Work;

/** Permits for scripts. */
@Path("/api/v1/permits")
@Authenticated
public class PermitsApi {

    /** A permit as it stands; {@code lastLookFrom} is when the watch for fire is over. */
    public record One(
            String vehicle,
            PermitIssued said,
            String issuer,
            State state,
            boolean open,
            String waitsFor,
            Optional<Instant> lastLookFrom) {

        static One of(PermitLine line) {
            Permit permit = line.permit();
            return new One(
                    Where.word(permit.subject()),
                    permit.said(),
                    permit.issuer(),
                    line.state(),
                    permit.open(),
                    line.waitsFor(),
                    permit.lastLookFrom());
        }
    }

    /** A permit to be; without an order it is for a place. */
    public record New(
            UUID id,
            Optional<String> order,
            Optional<String> place,
            Work sort,
            String work,
            Optional<List<Trait>> circumstances,
            List<Ticked> precautions,
            String receiver,
            Instant validUntil) {}

    /** A step with it. */
    public record Taken(UUID id, Optional<String> words) {}

    private final PermitLook look;
    private final Permitting permitting;
    private final SignedIn signedIn;

    PermitsApi(PermitLook look, Permitting permitting, SignedIn signedIn) {
        this.look = look;
        this.permitting = permitting;
        this.signedIn = signedIn;
    }

    @GET
    public List<One> all() {
        ListView list = look.list(signedIn.now());
        return Stream.concat(list.open().stream(), list.over().stream())
                .map(One::of)
                .toList();
    }

    @GET
    @Path(PermitsPage.ONE)
    public One one(String vehicle, int number) {
        return One.of(look.line(look.known(vehicle, number), signedIn.now()));
    }

    @POST
    public Response issue(New body) {
        return Receipt.of(permitting.issue(
                new Permitting.ToIssue(
                        body.id,
                        Where.stream(body.order),
                        body.sort,
                        body.place,
                        body.work,
                        body.circumstances.orElse(List.of()),
                        body.precautions,
                        body.receiver,
                        body.validUntil),
                signedIn.actor()));
    }

    @POST
    @Path(PermitsPage.ONE + "/{step}")
    public Response take(String vehicle, int number, String step, Taken body) {
        Permit permit = look.known(vehicle, number);
        Step wanted = Step.of(step).orElseThrow(NotFoundException::new);
        return Receipt.of(permitting.take(
                new Permitting.ToTake(body.id, permit.subject(), number, wanted, body.words), signedIn.actor()));
    }
}

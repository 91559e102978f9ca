package wainbook.isolation.step;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
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
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.isolation.Step;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.proof.Scope;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.page.api.WholeBody;

/**
 * A vehicle's isolation for scripts. Open to everybody who is signed in: who may take which step is the step's own rules, and
 * nobody is kept from making safe.
 */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/isolation")
@Authenticated
public class IsolationApi {

    /** A step to be; {@code with} holds what the step asks for, by its names. */
    public record Taking(UUID id, Optional<JsonNode> with, Optional<String> password, Optional<Long> seen) {}

    /** How the vehicle stands electrically. */
    public record Standing(
            long seen,
            State state,
            int isolation,
            Optional<String> station,
            String isolator,
            List<Isolation.Opened> openings,
            List<Lock> locks,
            List<String> aboard,
            List<String> points,
            Scope due,
            Optional<Instant> waitOverAt,
            Optional<Instant> provingEndsAt,
            Optional<Permit> permit) {}

    private final Ledger ledger;
    private final TakeStep takeStep;
    private final SignedIn signedIn;
    private final ObjectMapper json;

    IsolationApi(Ledger ledger, TakeStep takeStep, SignedIn signedIn, ObjectMapper json) {
        this.ledger = ledger;
        this.takeStep = takeStep;
        this.signedIn = signedIn;
        this.json = json;
    }

    @GET
    public Standing standing(String order) {
        History history = ledger.history(Subject.workOrder(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        Isolation now = Isolation.of(history).at(signedIn.now().at());
        return new Standing(
                history.number(),
                now.state(),
                now.number(),
                now.station(),
                now.isolator(),
                now.openings(),
                now.locks(),
                now.aboard(),
                now.points(),
                now.due(),
                now.waitOverAt(),
                now.provingEndsAt(),
                now.permit());
    }

    @POST
    @Path("{step}")
    public Response take(String order, String step, Taking body) throws JsonProcessingException {
        Step wanted = Wanted.step(step).orElseThrow(NotFoundException::new);
        JsonNode fields = body.with().orElseGet(json::createObjectNode);
        Wanted with = WholeBody.checked(json.treeToValue(fields, Wanted.BY_STEP.get(wanted)));
        return Receipt.of(
                takeStep.take(new ToTake(body.id(), order, with, body.password(), body.seen()), signedIn.actor()));
    }
}

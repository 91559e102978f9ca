package wainbook.line.move;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.line.move.Move.ToMove;
import wainbook.order.OrderSaying.Direction;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Moves for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/moves")
public class MoveApi {

    /** A move to be. */
    public record Wanted(
            UUID id,
            Direction direction,
            String to,
            Optional<String> stage,
            List<String> confirmed,
            Optional<String> reason,
            Optional<Long> seen) {}

    private final Move move;
    private final SignedIn signedIn;

    MoveApi(Move move, SignedIn signedIn) {
        this.move = move;
        this.signedIn = signedIn;
    }

    @POST
    @RolesAllowed({Role.teamLeader, Role.lineManager})
    public Response move(String order, Wanted body) {
        return Receipt.of(move.move(
                new ToMove(body.id, order, body.direction, body.to, body.stage, body.confirmed, body.reason, body.seen),
                signedIn.actor()));
    }
}

package wainbook.station.taking;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Items taken by name and given back, for scanners and connected tools. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
public class TakingApi {

    /** The item that is meant. */
    public record Item(UUID id, String item) {}

    private final Taking taking;
    private final SignedIn signedIn;

    TakingApi(Taking taking, SignedIn signedIn) {
        this.taking = taking;
        this.signedIn = signedIn;
    }

    @POST
    @Path("taken")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response take(String order, Item body) {
        return Receipt.of(taking.take(new Taking.ToTake(body.id, order, body.item), signedIn.actor()));
    }

    @POST
    @Path("given-back")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response giveBack(String order, Item body) {
        return Receipt.of(taking.giveBack(new Taking.ToGiveBack(body.id, order, body.item), signedIn.actor()));
    }
}

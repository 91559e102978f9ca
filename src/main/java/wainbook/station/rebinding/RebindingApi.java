package wainbook.station.rebinding;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** A vehicle's stage goes on by a newer sheet, for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/rebinding")
public class RebindingApi {

    /** The revision to go on by, and up to which entry the vehicle's record was looked at. */
    public record Newer(UUID id, int revision, Optional<Long> seen) {}

    private final Rebinding rebinding;
    private final SignedIn signedIn;

    RebindingApi(Rebinding rebinding, SignedIn signedIn) {
        this.rebinding = rebinding;
        this.signedIn = signedIn;
    }

    @POST
    @RolesAllowed(Role.worksEngineer)
    public Response rebind(String order, Newer body) {
        return Receipt.of(
                rebinding.rebind(new Rebinding.ToRebind(body.id, order, body.revision, body.seen), signedIn.actor()));
    }
}

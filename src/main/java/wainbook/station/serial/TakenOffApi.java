package wainbook.station.serial;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** A part off a vehicle that came back, for scripts. */
@Path("/api/v1/orders/{order}/parts/off")
public class TakenOffApi {

    /** The part. */
    public record Off(UUID id, String part, String serial, String reason) {}

    private final TakingOff takingOff;
    private final SignedIn signedIn;

    TakenOffApi(TakingOff takingOff, SignedIn signedIn) {
        this.takingOff = takingOff;
        this.signedIn = signedIn;
    }

    @POST
    @RolesAllowed({Role.technician, Role.teamLeader, Role.qualityEngineer})
    public Response takeOff(String order, Off body) {
        Numbers.subject(order);
        return Receipt.of(takingOff.takeOff(
                new TakingOff.ToTakeOff(body.id, order, body.part, body.serial, body.reason), signedIn.actor()));
    }
}

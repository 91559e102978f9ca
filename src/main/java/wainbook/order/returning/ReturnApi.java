package wainbook.order.returning;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.UUID;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** A new order for a vehicle that comes back, for scripts. */
@Path("/api/v1/orders/{order}/return")
public class ReturnApi {

    /** The new order. */
    public record ToReturn(
            UUID id, String number, String route, String operator, LocalDate promisedOn, String reason) {}

    private final Returning returning;
    private final SignedIn signedIn;

    ReturnApi(Returning returning, SignedIn signedIn) {
        this.returning = returning;
        this.signedIn = signedIn;
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager, Role.qualityEngineer})
    public Response order(String order, ToReturn body) {
        Numbers.subject(order);
        Numbers.subject(body.number);
        return Receipt.of(returning.order(
                new Returning.ToReturn(
                        body.id, body.number, order, body.route, body.operator, body.promisedOn, body.reason),
                signedIn.actor()));
    }
}

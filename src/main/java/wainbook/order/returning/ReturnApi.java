package wainbook.order.returning;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** A new order for a vehicle that comes back, for scripts. */
@Path("/api/v1/orders/{order}/return")
public class ReturnApi {

    /** The new order. */
    public record ToReturn(
            UUID id, String number, String route, String operator, LocalDate promisedOn, String reason) {}

    /** A route by which this vehicle can come back: none of its items wants no source of dangerous voltage aboard. */
    public record Offered(String code, String title) {}

    /**
     * What a new order can be.
     *
     * @param against what stands against any
     */
    public record Offer(List<Offered> routes, List<Problem.Ground> against) {}

    private final Ledger ledger;
    private final Returning returning;
    private final SignedIn signedIn;

    ReturnApi(Ledger ledger, Returning returning, SignedIn signedIn) {
        this.ledger = ledger;
        this.returning = returning;
        this.signedIn = signedIn;
    }

    @GET
    @RolesAllowed({Role.worksEngineer, Role.lineManager, Role.qualityEngineer})
    public Offer offer(String order) {
        WorkOrder earlier = WorkOrder.of(ledger.history(Numbers.subject(order))).orElseThrow(NotFoundException::new);
        return new Offer(
                returning.routes(earlier).stream()
                        .map(route -> new Offered(route.code(), route.title()))
                        .toList(),
                returning.against(earlier).stream().map(Problem.Ground::of).toList());
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

package wainbook.order.promise;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Promises to operators for scripts. */
@Path("/api/v1/orders/{order}/promises")
public class PromiseApi {

    /** A promise. */
    public record ToPromise(
            UUID id, String option, List<String> items, List<String> documents, boolean beforeHandover) {}

    /** Why a promise is withdrawn. */
    public record Withdrawal(UUID id, String reason) {}

    private final Ledger ledger;
    private final Promising promising;
    private final SignedIn signedIn;

    PromiseApi(Ledger ledger, Promising promising, SignedIn signedIn) {
        this.ledger = ledger;
        this.promising = promising;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Promise> promises(String order) {
        return Promise.of(ledger.history(Numbers.subject(order)));
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response promise(String order, ToPromise body) {
        Numbers.subject(order);
        return Receipt.of(promising.promise(
                new Promising.ToPromise(body.id, order, body.option, body.items, body.documents, body.beforeHandover),
                signedIn.actor()));
    }

    @POST
    @Path("{promise}/withdrawal")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response withdraw(String order, int promise, Withdrawal body) {
        Numbers.subject(order);
        return Receipt.of(
                promising.withdraw(new Promising.ToWithdraw(body.id, order, promise, body.reason), signedIn.actor()));
    }
}

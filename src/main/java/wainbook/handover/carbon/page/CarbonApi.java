package wainbook.handover.carbon.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSet;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonStating;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Carbon statements for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/carbon")
public class CarbonApi {

    /** @param sets factors that the program carries, by year */
    public record Known(Optional<CarbonStated> stated, List<CarbonSet> sets) {}

    /** @param year of the factors */
    public record State(UUID id, Basis basis, int year) {}

    private final Ledger ledger;
    private final CarbonStating stating;
    private final SignedIn signedIn;

    CarbonApi(Ledger ledger, CarbonStating stating, SignedIn signedIn) {
        this.ledger = ledger;
        this.stating = stating;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Known carbon(String order) {
        return new Known(
                CarbonStating.last(ledger.history(Numbers.subject(order))),
                CarbonSets.loaded().sets());
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response state(String order, State asked) {
        return Receipt.of(stating.state(
                new CarbonStating.ToState(asked.id(), order, asked.basis(), asked.year()), signedIn.actor()));
    }
}

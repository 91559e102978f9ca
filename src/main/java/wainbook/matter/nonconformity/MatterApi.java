package wainbook.matter.nonconformity;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Nonconformities for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/nonconformities")
public class MatterApi {

    /** Something seen that is not as it should be. */
    public record Report(UUID id, Optional<String> item, String what) {}

    /** What is done about it. */
    public record Decided(UUID id, Disposition disposition, String because, Optional<Long> seen) {}

    private final Ledger ledger;
    private final Reporting reporting;
    private final Disposal disposal;
    private final SignedIn signedIn;

    MatterApi(Ledger ledger, Reporting reporting, Disposal disposal, SignedIn signedIn) {
        this.ledger = ledger;
        this.reporting = reporting;
        this.disposal = disposal;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Nonconformity> all(String order) {
        return Nonconformities.of(ledger.history(Subject.workOrder(order))).all();
    }

    @POST
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.worksEngineer, Role.qualityEngineer})
    public Response report(String order, Report body) {
        return Receipt.of(
                reporting.report(new Reporting.ToReport(body.id, order, body.item, body.what), signedIn.actor()));
    }

    @POST
    @Path("{number}/disposition")
    @RolesAllowed(Role.qualityEngineer)
    public Response decide(String order, int number, Decided body) {
        return Receipt.of(disposal.decide(
                new Disposal.Dispose(body.id, order, number, body.disposition, body.because, body.seen),
                signedIn.actor()));
    }
}

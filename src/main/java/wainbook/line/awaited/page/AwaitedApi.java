package wainbook.line.awaited.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.awaited.Awaiting;
import wainbook.line.awaited.Coming;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Parts that are missing for a vehicle, for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/awaited")
public class AwaitedApi {

    /** @param part its code in the sheet of the stage, where an item names it */
    public record Await(UUID id, String stage, String what, Optional<String> part, LocalDate expectedOn) {}

    public record Expect(UUID id, LocalDate expectedOn) {}

    public record Came(UUID id, String remark) {}

    private final Ledger ledger;
    private final Awaiting awaiting;
    private final Coming coming;
    private final SignedIn signedIn;

    AwaitedApi(Ledger ledger, Awaiting awaiting, Coming coming, SignedIn signedIn) {
        this.ledger = ledger;
        this.awaiting = awaiting;
        this.coming = coming;
        this.signedIn = signedIn;
    }

    /** Those that came too. */
    @GET
    @Authenticated
    public List<AwaitedPart> all(String order) {
        History history = ledger.history(Numbers.subject(order));
        return WorkOrder.of(history)
                .map(known -> AwaitedParts.of(history).all())
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response await(String order, Await asked) {
        return Receipt.of(awaiting.await(
                new Awaiting.ToAwait(asked.id(), order, asked.stage(), asked.what(), asked.part(), asked.expectedOn()),
                signedIn.actor()));
    }

    @POST
    @Path("{number: [0-9]{1,6}}/expected")
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response expect(String order, int number, Expect asked) {
        return Receipt.of(awaiting.expect(
                new Awaiting.ToExpect(asked.id(), order, number, asked.expectedOn()), signedIn.actor()));
    }

    @POST
    @Path("{number: [0-9]{1,6}}/came")
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response note(String order, int number, Came asked) {
        return Receipt.of(coming.note(new Coming.ToNote(asked.id(), order, number, asked.remark()), signedIn.actor()));
    }
}

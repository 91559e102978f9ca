package wainbook.order;

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
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.Holding;
import wainbook.order.hold.StandingHolds;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Work orders for scripts. */
@Path("/api/v1/orders")
public class OrderApi {

    /**
     * A work order as a script reads it.
     *
     * @param seen what an act that judges the whole must carry
     * @param heldByRule holds that stand though its own record does not say so, by a former record or an open campaign
     */
    public record Known(long seen, WorkOrder order, List<HoldByRule> heldByRule) {}

    /** A new order. */
    public record ToOrder(
            UUID id,
            String number,
            String operator,
            String variant,
            String route,
            LocalDate promisedOn,
            List<FactStated> facts) {}

    /** A donor at the door. */
    public record Donor(UUID id, String vin, String registration, int odometerKm) {}

    /** A fact of the vehicle. */
    public record Fact(UUID id, String fact, String stated) {}

    /** A hold to be. */
    public record Hold(UUID id, HoldKind kindOfHold, List<Stops> stops, String reason) {}

    /** Why a hold is released. */
    public record Release(UUID id, String reason) {}

    private final Ledger ledger;
    private final Ordering ordering;
    private final Intake intake;
    private final Holding holding;
    private final StandingHolds holds;
    private final SignedIn signedIn;

    OrderApi(Ledger ledger, Ordering ordering, Intake intake, Holding holding, StandingHolds holds, SignedIn signedIn) {
        this.ledger = ledger;
        this.ordering = ordering;
        this.intake = intake;
        this.holding = holding;
        this.holds = holds;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<WorkOrderRow> orders() {
        return WorkOrderRow.all();
    }

    @GET
    @Path("{order}")
    @Authenticated
    public Known order(String order) {
        var history = ledger.history(subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return new Known(history.number(), known, holds.on(known));
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response make(ToOrder body) {
        subject(body.number);
        return Receipt.of(ordering.order(
                new Ordering.ToOrder(
                        body.id, body.number, body.operator, body.variant, body.route, body.promisedOn, body.facts),
                signedIn.actor()));
    }

    @POST
    @Path("{order}/facts")
    @RolesAllowed({Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response state(String order, Fact body) {
        subject(order);
        return Receipt.of(
                ordering.state(new Ordering.ToState(body.id, order, body.fact, body.stated), signedIn.actor()));
    }

    @POST
    @Path("{order}/donor")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.lineManager})
    public Response receive(String order, Donor body) {
        subject(order);
        return Receipt.of(intake.receive(
                new Intake.ToReceive(body.id, order, body.vin, body.registration, body.odometerKm), signedIn.actor()));
    }

    @POST
    @Path("{order}/holds")
    @RolesAllowed({
        Role.technician,
        Role.teamLeader,
        Role.inspector,
        Role.lineManager,
        Role.worksEngineer,
        Role.qualityEngineer
    })
    public Response hold(String order, Hold body) {
        subject(order);
        return Receipt.of(holding.hold(
                new Holding.ToHold(body.id, order, body.kindOfHold, body.stops, body.reason), signedIn.actor()));
    }

    @POST
    @Path("{order}/holds/{hold}/release")
    @RolesAllowed({Role.lineManager, Role.worksEngineer, Role.qualityEngineer})
    public Response release(String order, int hold, Release body) {
        subject(order);
        return Receipt.of(holding.release(new Holding.ToRelease(body.id, order, hold, body.reason), signedIn.actor()));
    }

    /** A number that cannot be one is not found, whatever else is wrong. */
    private static Subject subject(String number) {
        return Optional.of(number)
                .filter(text -> text.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}"))
                .map(Subject::workOrder)
                .orElseThrow(NotFoundException::new);
    }
}

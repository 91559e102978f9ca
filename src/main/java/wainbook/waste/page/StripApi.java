package wainbook.waste.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.process.stream.Fate;
import wainbook.waste.TakenOut;
import wainbook.waste.Thing;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.EngineFate;
import wainbook.works.Role;

/** What was taken out of a vehicle, for scripts. */
@Path("/api/v1/orders/{order: " + Numbers.FORM + "}/strip")
@Authenticated
public class StripApi {

    /** One thing as it stands. */
    public record One(
            String thing,
            String what,
            String code,
            BigDecimal massKg,
            Optional<BigDecimal> volumeL,
            Fate fate,
            Thing.Standing standing,
            Optional<String> container,
            Optional<LocalDate> dueOn) {

        static One of(Thing thing) {
            return new One(
                    thing.key(),
                    thing.what(),
                    thing.row().code(),
                    thing.countedKg(),
                    thing.volumeL(),
                    thing.fate(),
                    thing.standing(),
                    thing.container(),
                    thing.dueOn());
        }
    }

    /** Something that no item weighs. */
    public record New(UUID id, String what, String code, BigDecimal massKg, Fate fate) {}

    /** What becomes of a thing. */
    public record Decision(
            UUID id,
            Fate fate,
            Optional<String> party,
            Optional<LocalDate> dueOn,
            Optional<String> place,
            Optional<String> why) {}

    /** Whether a part may be fitted again. */
    public record Test(UUID id, boolean fit, String found) {}

    /** Who got it. */
    public record Given(UUID id, String to, Optional<String> reference) {}

    /** That the engine was made unusable; the photographs were handed in before. */
    public record Engine(
            UUID id,
            String serial,
            String method,
            LocalDate on,
            String before,
            String after,
            Optional<String> ticket,
            Optional<String> permit) {}

    private final Ledger ledger;
    private final TakenOut takenOut;
    private final Deciding deciding;
    private final EngineFate engine;
    private final SignedIn signedIn;

    StripApi(Ledger ledger, TakenOut takenOut, Deciding deciding, EngineFate engine, SignedIn signedIn) {
        this.ledger = ledger;
        this.takenOut = takenOut;
        this.deciding = deciding;
        this.engine = engine;
        this.signedIn = signedIn;
    }

    @GET
    public List<One> all(String order) {
        return takenOut.of(ledger.history(Numbers.subject(order))).stream()
                .map(One::of)
                .toList();
    }

    @POST
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response note(String order, New body) {
        return Receipt.of(deciding.note(
                new Deciding.ToNote(body.id, order, body.what, body.code, body.massKg, body.fate), signedIn.actor()));
    }

    @POST
    @Path("engine")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response engine(String order, Engine body) {
        return Receipt.of(engine.record(
                new EngineFate.ToRecord(
                        body.id,
                        order,
                        body.serial,
                        body.method,
                        body.on,
                        body.before,
                        body.after,
                        body.ticket,
                        body.permit),
                signedIn.actor()));
    }

    @POST
    @Path("{thing}/fate")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response decide(String order, String thing, Decision body) {
        return Receipt.of(deciding.decide(
                new Deciding.ToDecide(
                        body.id, order, thing, body.fate, body.party, body.dueOn, body.place, body.why.orElse("")),
                signedIn.actor()));
    }

    @POST
    @Path("{thing}/test")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response test(String order, String thing, Test body) {
        return Receipt.of(
                deciding.test(new Deciding.ToTest(body.id, order, thing, body.fit, body.found), signedIn.actor()));
    }

    @POST
    @Path("{thing}/given")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response give(String order, String thing, Given body) {
        return Receipt.of(deciding.give(
                new Deciding.ToGive(body.id, order, thing, body.to, body.reference.orElse("")), signedIn.actor()));
    }
}

package wainbook.handover.record.page;

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
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.RecordSaying.Absence;
import wainbook.handover.record.RecordSaying.Manner;
import wainbook.handover.record.RecordSaying.Sort;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.act.Condition;
import wainbook.handover.record.act.Instructing;
import wainbook.handover.record.act.Receipting;
import wainbook.handover.record.act.WarrantyStart;
import wainbook.handover.record.act.Withdrawing;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** The handover record for scripts. People of others are tokens in what is read; their names are only ever sent in. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/handover-record")
@RolesAllowed({Role.technician, Role.teamLeader, Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
public class RecordApi {

    public record State(UUID id, int odometerKm, int chargePercent, String bay) {}

    /** @param nothing true where nothing is given with the vehicle */
    public record Things(UUID id, List<Thing> things, Optional<Boolean> nothing) {}

    /** @param sha256 of a photograph handed in before by {@code files} */
    public record Pictured(UUID id, String place, Optional<String> remark, String sha256) {}

    /** @param by the number of who instructed */
    public record Instruction(
            UUID id,
            List<String> driverNames,
            List<String> workshopNames,
            String by,
            List<String> topics,
            LocalDate on) {}

    public record Omitted(UUID id, String reason) {}

    public record Warranty(UUID id, LocalDate from, int odometerKm, String covers) {}

    public record Withdrawal(UUID id, Sort sort, int piece, String reason) {}

    /**
     * @param strokes of the signature, each a list of points {@code [x, y]}: whole numbers up to 1000 across and 300 down
     * @param confirmed that the typed name stands for the signature
     */
    public record Signed(
            UUID id,
            String content,
            String name,
            String role,
            String firm,
            Manner manner,
            Optional<List<List<List<Integer>>>> strokes,
            Optional<Boolean> confirmed) {}

    /** @param password of the witness */
    public record Missing(UUID id, String content, Absence absence, String reason, String witness, String password) {}

    private final Ledger ledger;
    private final RecordLook look;
    private final Condition condition;
    private final Instructing instructing;
    private final WarrantyStart warranty;
    private final Withdrawing withdrawing;
    private final Receipting receipting;
    private final SignedIn signedIn;

    RecordApi(
            Ledger ledger,
            RecordLook look,
            Condition condition,
            Instructing instructing,
            WarrantyStart warranty,
            Withdrawing withdrawing,
            Receipting receipting,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.condition = condition;
        this.instructing = instructing;
        this.warranty = warranty;
        this.withdrawing = withdrawing;
        this.receipting = receipting;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public RecordKnown record(String order) {
        return look.at(ledger.history(Numbers.subject(order)), signedIn.now().at())
                .map(RecordKnown::of)
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("state")
    public Response read(String order, State asked) {
        return Receipt.of(condition.read(
                new Condition.ToRead(asked.id(), order, asked.odometerKm(), asked.chargePercent(), asked.bay()),
                signedIn.actor()));
    }

    @POST
    @Path("things")
    public Response list(String order, Things asked) {
        return Receipt.of(condition.list(
                new Condition.ToList(
                        asked.id(), order, asked.things(), asked.nothing().orElse(false)),
                signedIn.actor()));
    }

    @POST
    @Path("pictures")
    public Response picture(String order, Pictured asked) {
        return Receipt.of(condition.picture(
                new Condition.ToPicture(
                        asked.id(), order, asked.place(), asked.remark().orElse(""), asked.sha256()),
                signedIn.actor()));
    }

    @POST
    @Path("instructions")
    public Response instruct(String order, Instruction asked) {
        return Receipt.of(instructing.instruct(
                new Instructing.ToInstruct(
                        asked.id(),
                        order,
                        asked.driverNames(),
                        asked.workshopNames(),
                        asked.by(),
                        asked.topics(),
                        asked.on()),
                signedIn.actor()));
    }

    @POST
    @Path("instructions/none")
    public Response omit(String order, Omitted asked) {
        return Receipt.of(
                instructing.omit(new Instructing.ToOmit(asked.id(), order, asked.reason()), signedIn.actor()));
    }

    @POST
    @Path("warranty")
    public Response begin(String order, Warranty asked) {
        return Receipt.of(warranty.begin(
                new WarrantyStart.ToBegin(asked.id(), order, asked.from(), asked.odometerKm(), asked.covers()),
                signedIn.actor()));
    }

    @POST
    @Path("withdrawals")
    public Response withdraw(String order, Withdrawal asked) {
        return Receipt.of(withdrawing.withdraw(
                new Withdrawing.ToWithdraw(asked.id(), order, asked.sort(), asked.piece(), asked.reason()),
                signedIn.actor()));
    }

    @POST
    @Path("receipts")
    @RolesAllowed({Role.handoverClerk, Role.teamLeader, Role.lineManager})
    public Response sign(String order, Signed asked) {
        return Receipt.of(receipting.sign(
                new Receipting.ToSign(
                        asked.id(),
                        order,
                        asked.content(),
                        asked.name(),
                        asked.role(),
                        asked.firm(),
                        asked.manner(),
                        asked.strokes().map(String::valueOf).orElse(""),
                        asked.confirmed().orElse(false)),
                signedIn.actor()));
    }

    @POST
    @Path("receipts/missing")
    @RolesAllowed({Role.handoverClerk, Role.teamLeader, Role.lineManager})
    public Response miss(String order, Missing asked) {
        return Receipt.of(receipting.miss(
                new Receipting.ToMiss(
                        asked.id(),
                        order,
                        asked.content(),
                        asked.absence(),
                        asked.reason(),
                        asked.witness(),
                        asked.password()),
                signedIn.actor()));
    }
}

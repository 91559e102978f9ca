package wainbook.order.calibration;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** The calibration that an order asks for, for scripts. */
@Path("/api/v1/orders/{order}/calibration")
public class CalibrationApi {

    /**
     * As it stands.
     *
     * @param judged what an act about it must carry
     * @param which how the calibration that was read in the vehicle stands
     * @param against why the last gate would not be signed
     */
    public record Known(
            long judged,
            List<Wish> wishes,
            Optional<SameTime> sameTime,
            Comparison.Which which,
            Optional<String> calibration,
            List<Compared> compared,
            List<Problem.Ground> against) {}

    /** One value: asked, released, read, and how they compare; {@code off} is found less asked. */
    public record Compared(
            String setting,
            String unit,
            BigDecimal asked,
            BigDecimal tolerance,
            Optional<BigDecimal> released,
            Optional<BigDecimal> read,
            Comparison.Verdict verdict,
            Optional<BigDecimal> off) {
        static Compared of(Comparison.Line line) {
            Wish wish = line.wish();
            return new Compared(
                    wish.setting().name(),
                    wish.setting().unit(),
                    wish.value(),
                    wish.tolerance(),
                    line.released(),
                    line.read(),
                    line.verdict(),
                    line.off());
        }
    }

    /** What is asked, all of it; no wishes: nothing any longer. */
    public record ToAsk(UUID id, long judged, List<Wish> wishes, Optional<SameTime> sameTime) {}

    private final Ledger ledger;
    private final CalibrationLook look;
    private final Asking asking;
    private final SignedIn signedIn;

    CalibrationApi(Ledger ledger, CalibrationLook look, Asking asking, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.asking = asking;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Known calibration(String order) {
        History history = ledger.history(Numbers.subject(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        Wanted wanted = Wanted.of(history);
        Comparison compared = look.compared(history);
        return new Known(
                wanted.seen(),
                wanted.wishes(),
                wanted.sameTime(),
                compared.which(),
                compared.read().calibration(),
                compared.lines().stream().map(Compared::of).toList(),
                compared.against().stream().map(Problem.Ground::of).toList());
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response ask(String order, ToAsk body) {
        Numbers.subject(order);
        return Receipt.of(asking.ask(
                new Asking.ToAsk(body.id, order, body.wishes, body.sameTime, body.judged), signedIn.actor()));
    }
}

package wainbook.station.help;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.station.StationSaying.Help;

/** Help calls, for buttons and lamps at the stations. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/help-calls")
@Authenticated
public class HelpApi {

    /** Help is called; {@code workStands} where work stands still until somebody comes. */
    public record Call(UUID id, Help help, Optional<String> words, Optional<Boolean> workStands) {}

    /** Somebody comes. */
    public record Answer(UUID id) {}

    /** It is settled. */
    public record Resolve(UUID id, Optional<String> words) {}

    private final Ledger ledger;
    private final Calling calling;
    private final SignedIn signedIn;

    HelpApi(Ledger ledger, Calling calling, SignedIn signedIn) {
        this.ledger = ledger;
        this.calling = calling;
        this.signedIn = signedIn;
    }

    @GET
    public List<HelpCall> all(String order) {
        return HelpCall.of(ledger.history(Subject.workOrder(order)));
    }

    @POST
    public Response call(String order, Call body) {
        var asked = new Calling.ToCall(body.id, order, body.help, body.words, body.workStands.orElse(false));
        return Receipt.of(calling.call(asked, signedIn.actor()));
    }

    @POST
    @Path("{call: [0-9]{1,6}}/answered")
    public Response answer(String order, int call, Answer body) {
        return Receipt.of(calling.answer(new Calling.ToAnswer(body.id, order, call), signedIn.actor()));
    }

    @POST
    @Path("{call: [0-9]{1,6}}/resolved")
    public Response resolve(String order, int call, Resolve body) {
        return Receipt.of(calling.resolve(new Calling.ToResolve(body.id, order, call, body.words), signedIn.actor()));
    }
}

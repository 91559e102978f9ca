package wainbook.gate;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Gates for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
public class GateApi {

    /** A gate as a script reads it; {@code against} is what stands against the reader's own signature. */
    public record Seen(String stage, Gate.Standing standing, String fingerprint, List<Problem.Ground> against) {}

    /** A signature; the password is the signer's own, asked for again. */
    public record Signature(UUID id, String fingerprint, String password) {}

    /** A refusal, with the items to look at again. */
    public record Refusal(UUID id, String fingerprint, List<String> items, String reason, boolean rejectsDonor) {}

    private final Ledger ledger;
    private final GateLook look;
    private final SignOff signOff;
    private final SignedIn signedIn;

    GateApi(Ledger ledger, GateLook look, SignOff signOff, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.signOff = signOff;
        this.signedIn = signedIn;
    }

    @GET
    @Path("gates/{stage}")
    @Authenticated
    public Response gate(String order, String stage) {
        return look.at(ledger.history(Subject.workOrder(order)), stage, signedIn.now())
                .fold(
                        rules -> Response.ok(seen(rules)).build(),
                        reasons -> Problem.of(404, "page.missingTitle", reason(reasons))
                                .response());
    }

    @POST
    @Path("gates/{stage}/sign-off")
    @RolesAllowed(Role.inspector)
    public Response sign(String order, String stage, Signature body) {
        return Receipt.of(signOff.sign(
                new SignOff.ToSign(body.id, order, stage, body.fingerprint, body.password), signedIn.actor()));
    }

    @POST
    @Path("gates/{stage}/refusal")
    @RolesAllowed(Role.inspector)
    public Response refuse(String order, String stage, Refusal body) {
        return Receipt.of(signOff.refuse(
                new SignOff.ToRefuse(
                        body.id, order, stage, body.fingerprint, body.items, body.reason, body.rejectsDonor),
                signedIn.actor()));
    }

    private static Seen seen(GateRules rules) {
        Gate gate = rules.gate();
        return new Seen(
                gate.record().stage(),
                gate.standing(),
                gate.fingerprint(),
                rules.against().stream().map(Problem.Ground::of).toList());
    }

    private static String reason(List<Reason> reasons) {
        return Problem.of(reasons).detail();
    }
}

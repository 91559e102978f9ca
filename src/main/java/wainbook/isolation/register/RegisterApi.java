package wainbook.isolation.register;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.isolation.fact.Register;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;

/** The register for scripts. Who may change it is a rule of the act: managers and appointed issuers. */
@Path("/api/v1/locks")
@Authenticated
public class RegisterApi {

    /** A numbered thing to be. */
    public record Wanted(UUID id, String number, Register.Sort sort, Optional<String> owner) {}

    /** A number to be retired. */
    public record Retired(UUID id, String reason) {}

    private final Ledger ledger;
    private final Registering registering;
    private final SignedIn signedIn;

    RegisterApi(Ledger ledger, Registering registering, SignedIn signedIn) {
        this.ledger = ledger;
        this.registering = registering;
        this.signedIn = signedIn;
    }

    @GET
    public List<Register.Item> all() {
        return Register.of(ledger.history(Subject.works())).items();
    }

    @POST
    public Response register(Wanted body) {
        return Receipt.of(registering.register(
                new Registering.ToRegister(body.id(), body.number(), body.sort(), body.owner()), signedIn.actor()));
    }

    @POST
    @Path("{number}/retirement")
    public Response retire(String number, Retired body) {
        return Receipt.of(
                registering.retire(new Registering.ToRetire(body.id(), number, body.reason()), signedIn.actor()));
    }
}

package wainbook.works.instruments;

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
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Instrument;
import wainbook.works.Role;

/** The register of instruments for scripts. */
@Path("/api/v1/instruments")
public class InstrumentsApi {

    private static final String ONE = "{code: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}";

    /** A new instrument. */
    public record New(
            UUID id,
            String code,
            String kind,
            String title,
            String unit,
            BigDecimal lower,
            BigDecimal upper,
            Optional<BigDecimal> accuracyPercent) {
        public New {
            if (code != null && !code.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
                throw new IllegalArgumentException("an instrument's code is letters, digits, dots, dashes");
            }
        }
    }

    /** A calibration that found it fit. */
    public record Calibration(UUID id, LocalDate on, LocalDate due, String certificate, Optional<Long> seen) {}

    /** Why it is not to be used. */
    public record Why(UUID id, String reason) {}

    private final Ledger ledger;
    private final Register register;
    private final SignedIn signedIn;

    InstrumentsApi(Ledger ledger, Register register, SignedIn signedIn) {
        this.ledger = ledger;
        this.register = register;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Instrument> all() {
        return ledger.subjects(Subject.Sort.INSTRUMENT).stream()
                .flatMap(subject -> Instrument.of(ledger.history(subject)).stream())
                .toList();
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response register(New body) {
        return Receipt.of(register.register(
                new Register.ToRegister(
                        body.id,
                        body.code,
                        body.kind,
                        body.title,
                        body.unit,
                        body.lower,
                        body.upper,
                        body.accuracyPercent),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/calibrations")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response calibrate(String code, Calibration body) {
        return Receipt.of(register.calibrate(
                new Register.ToCalibrate(body.id, code, body.on, body.due, body.certificate, body.seen),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/withdrawal")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer, Role.technician})
    public Response withdraw(String code, Why body) {
        return Receipt.of(register.withdraw(new Register.ToWithdraw(body.id, code, body.reason), signedIn.actor()));
    }
}

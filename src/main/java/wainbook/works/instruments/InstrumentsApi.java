package wainbook.works.instruments;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.calibration.Calibrating;
import wainbook.works.instruments.daily.Checking;
import wainbook.works.instruments.store.Store;

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

    /** A calibration; without points one that found it fit. */
    public record Calibration(
            UUID id,
            LocalDate on,
            Optional<LocalDate> due,
            String certificate,
            Optional<String> laboratory,
            Optional<BigDecimal> permittedPercent,
            Optional<List<CalibrationPoint>> asFound,
            Optional<Adjustment> adjustment,
            Optional<List<CalibrationPoint>> asLeft,
            Optional<Long> operations,
            Optional<Long> seen) {

        Calibrating.ToCalibrate of(String code) {
            return new Calibrating.ToCalibrate(
                    id,
                    code,
                    on,
                    due,
                    certificate,
                    laboratory,
                    permittedPercent,
                    asFound.orElse(List.of()),
                    adjustment.orElse(Adjustment.NONE),
                    asLeft.orElse(List.of()),
                    operations,
                    seen);
        }
    }

    /** Three pulls on a tester. */
    public record Check(UUID id, String tester, BigDecimal target, List<BigDecimal> references) {}

    /** To whom it goes out. */
    public record Out(UUID id, String to, Optional<String> place) {}

    /** How it comes back. */
    public record Back(UUID id, boolean sound, Optional<String> remark) {}

    /** Why it is not to be used; without a cause one that puts no reading in doubt. */
    public record Why(UUID id, Optional<WithdrawalCause> cause, String reason, Optional<Instant> since) {}

    private final Ledger ledger;
    private final Register register;
    private final Calibrating calibrating;
    private final Checking checking;
    private final Store store;
    private final SignedIn signedIn;

    InstrumentsApi(
            Ledger ledger,
            Register register,
            Calibrating calibrating,
            Checking checking,
            Store store,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.register = register;
        this.calibrating = calibrating;
        this.checking = checking;
        this.store = store;
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
        return Receipt.of(calibrating.calibrate(body.of(code), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/checks")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
    public Response check(String code, Check body) {
        return Receipt.of(checking.check(
                new Checking.ToCheck(body.id, code, body.tester, body.target, body.references), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/issues")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
    public Response issue(String code, Out body) {
        return Receipt.of(store.issue(new Store.ToIssue(body.id, code, body.to, body.place), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/returns")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
    public Response takeBack(String code, Back body) {
        return Receipt.of(store.takeBack(new Store.ToReturn(body.id, code, body.sound, body.remark), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/withdrawal")
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer, Role.technician})
    public Response withdraw(String code, Why body) {
        return Receipt.of(register.withdraw(
                new Register.ToWithdraw(
                        body.id, code, body.cause.orElse(WithdrawalCause.OTHER), body.reason, body.since),
                signedIn.actor()));
    }
}

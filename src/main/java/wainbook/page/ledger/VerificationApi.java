package wainbook.page.ledger;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;

/** Verifies the whole record now: every stored byte is read and hashed. */
@Path("/api/v1/ledger/verification")
@RolesAllowed({Checkers.AUDITOR, Checkers.QUALITY_ENGINEER, Checkers.ADMINISTRATOR})
public class VerificationApi {

    /** What was read and what was found; sound when nothing was found. */
    public record Verified(boolean sound, long streams, long entries, long files, List<Found> findings) {
        static Verified of(VerificationReport report) {
            return new Verified(
                    report.sound(),
                    report.streams(),
                    report.entries(),
                    report.files(),
                    report.findings().stream().map(Found::of).toList());
        }
    }

    private final Verify verify;

    VerificationApi(Verify verify) {
        this.verify = verify;
    }

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    public Verified verification() {
        return Verified.of(verify.everything());
    }
}

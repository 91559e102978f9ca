package wainbook.page.ledger;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;

/** Verifies the whole record for whoever checks it, and shows what was found. Reading changes nothing. */
@Path("/verification")
@RolesAllowed({Checkers.AUDITOR, Checkers.QUALITY_ENGINEER, Checkers.ADMINISTRATOR})
@Produces(MediaType.TEXT_HTML)
public class VerificationPage {

    @CheckedTemplate(basePath = "page", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance verification(VerificationView view);
    }

    private final Verify verify;
    private final Clock clock;

    VerificationPage(Verify verify, Clock clock) {
        this.verify = verify;
        this.clock = clock;
    }

    @GET
    public TemplateInstance before() {
        return Templates.verification(new VerificationView(verify.extent(), Optional.empty()));
    }

    @POST
    public TemplateInstance verified() {
        Instant begun = clock.instant();
        VerificationReport report = verify.everything();
        var done = VerificationView.Done.of(report, begun, Duration.between(begun, clock.instant()));
        return Templates.verification(new VerificationView(verify.extent(), Optional.of(done)));
    }
}

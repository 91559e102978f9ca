package wainbook.handover.record.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import wainbook.handover.record.act.Snagging;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Snags of a handover record for scripts: agreed, and put right. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/handover-record/snags")
@RolesAllowed({Role.technician, Role.teamLeader, Role.handoverClerk, Role.lineManager, Role.qualityEngineer})
public class SnagApi {

    /** @param withName of the operator's person; kept outside the ledger */
    public record Snag(
            UUID id,
            String defect,
            String place,
            String withName,
            Optional<String> owner,
            String remedy,
            LocalDate dueOn) {}

    public record Closing(UUID id, String done, Optional<String> sha256) {}

    private final Snagging snagging;
    private final SignedIn signedIn;

    SnagApi(Snagging snagging, SignedIn signedIn) {
        this.snagging = snagging;
        this.signedIn = signedIn;
    }

    @POST
    public Response agree(String order, Snag asked) {
        return Receipt.of(snagging.agree(
                new Snagging.ToAgree(
                        asked.id(),
                        order,
                        asked.defect(),
                        asked.place(),
                        asked.withName(),
                        asked.owner(),
                        asked.remedy(),
                        asked.dueOn()),
                signedIn.actor()));
    }

    @POST
    @Path("{snag}/closing")
    public Response close(String order, int snag, Closing asked) {
        return Receipt.of(snagging.close(
                new Snagging.ToClose(asked.id(), order, snag, asked.done(), asked.sha256()), signedIn.actor()));
    }
}

package wainbook.handover.issue.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.handover.HandoverSaying.Issued;
import wainbook.handover.issue.IssueLook;
import wainbook.handover.issue.IssueRules;
import wainbook.handover.issue.Issuing;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Documents that the works issues, for scripts. Their files lie under {@code /evidence}. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/issues")
public class IssueApi {

    /**
     * One document.
     *
     * @param revision of its text
     * @param issued the last issue
     * @param against what stands against issuing it by whoever asks
     */
    public record Known(
            String document, String title, int revision, Optional<Issued> issued, List<Problem.Ground> against) {

        static Known of(IssueList.Row row) {
            return new Known(
                    row.rules().template().code(),
                    row.rules().template().title(),
                    row.rules().template().revision(),
                    row.last().map(entry -> (Issued) entry.saying()),
                    row.rules().against().stream().map(Problem.Ground::of).toList());
        }
    }

    /** @param seen the number of the order's stream when it was read */
    public record Issue(UUID id, String password, Optional<Long> seen) {}

    private final Ledger ledger;
    private final IssueLook look;
    private final Issuing issuing;
    private final SignedIn signedIn;

    IssueApi(Ledger ledger, IssueLook look, Issuing issuing, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.issuing = issuing;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Known> all(String order) {
        History history = ledger.history(Numbers.subject(order));
        List<IssueRules> all = look.all(history, signedIn.now());
        if (all.isEmpty()) {
            throw new NotFoundException();
        }
        return new IssueList(order, history, all).rows().stream().map(Known::of).toList();
    }

    @POST
    @Path("{document}")
    @RolesAllowed({Role.inspector, Role.lineManager, Role.worksEngineer, Role.qualityEngineer, Role.handoverClerk})
    public Response issue(String order, String document, Issue asked) {
        return Receipt.of(issuing.issue(
                new Issuing.ToIssue(asked.id(), order, document, asked.password(), asked.seen()), signedIn.actor()));
    }
}

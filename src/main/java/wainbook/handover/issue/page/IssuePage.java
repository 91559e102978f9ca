package wainbook.handover.issue.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.handover.issue.IssueLook;
import wainbook.handover.issue.IssueRules;
import wainbook.handover.issue.Issues;
import wainbook.handover.issue.Issuing;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The documents that the works issues for a vehicle. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/issue")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class IssuePage {

    private final Ledger ledger;
    private final IssueLook look;
    private final Issuing issuing;
    private final SignedIn signedIn;

    IssuePage(Ledger ledger, IssueLook look, Issuing issuing, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.issuing = issuing;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance all(String order) {
        History history = ledger.history(Numbers.subject(order));
        List<IssueRules> all = look.all(history, signedIn.now());
        if (all.isEmpty()) {
            throw new NotFoundException();
        }
        return IssuePages.issues(new IssueList(order, history, all));
    }

    @GET
    @Path("{document}")
    public TemplateInstance one(String order, String document) {
        return draw(order, document, Filled.fresh());
    }

    @POST
    @Path("{document}")
    @RolesAllowed({Role.inspector, Role.lineManager, Role.worksEngineer, Role.qualityEngineer, Role.handoverClerk})
    public Response issue(String order, String document, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Issuing.ToIssue(
                form.filled().id(),
                order,
                document,
                form.text("password"),
                form.maybe("seen").filter(text -> text.matches("\\d{1,18}")).map(Long::valueOf));
        return form.filled()
                .answer(
                        issuing.issue(asked, signedIn.actor()),
                        "/handover/" + order + "/issue/" + document,
                        again -> draw(order, document, again));
    }

    private TemplateInstance draw(String order, String document, Filled filled) {
        History history = ledger.history(Numbers.subject(order));
        IssueRules rules = look.one(history, document, signedIn.now()).orElseThrow(NotFoundException::new);
        return look.shown(rules)
                .fold(
                        html -> drawn(history, rules, Optional.of(html), List.of(), filled),
                        broken -> drawn(history, rules, Optional.empty(), broken, filled));
    }

    private static TemplateInstance drawn(
            History history, IssueRules rules, Optional<String> html, List<Reason> broken, Filled filled) {
        return IssuePages.issue(new IssueView(
                rules, Issues.of(history, rules.template().code()), history.number(), html, broken, filled));
    }
}

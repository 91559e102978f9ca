package wainbook.gate;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.page.OrderBar;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Redirect;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.station.DeferredWork;
import wainbook.works.Role;

/** The inspector's pages: the queue of gates, and one gate with its evidence. */
@Path("/gates")
@Produces(MediaType.TEXT_HTML)
public class GatePage {

    private static final String ONE = "{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/{stage}";

    private final Ledger ledger;
    private final GateLook look;
    private final GateQueue queue;
    private final SignOff signOff;
    private final Releases releases;
    private final OrderBar bar;
    private final SignedIn signedIn;

    GatePage(
            Ledger ledger,
            GateLook look,
            GateQueue queue,
            SignOff signOff,
            Releases releases,
            OrderBar bar,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.queue = queue;
        this.signOff = signOff;
        this.releases = releases;
        this.bar = bar;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance gates() {
        return GatePages.queue(queue.now(signedIn.now()));
    }

    @GET
    @Path(ONE)
    @Authenticated
    public TemplateInstance gate(String order, String stage) {
        return shown(order, stage, List.of(), Form.EMPTY);
    }

    @POST
    @Path(ONE + "/sign-off")
    @RolesAllowed(Role.inspector)
    public Response sign(
            String order,
            String stage,
            @RestForm UUID id,
            @RestForm String fingerprint,
            @RestForm Optional<String> password) {
        return answer(
                order,
                stage,
                Form.EMPTY,
                signOff.sign(new SignOff.ToSign(id, order, stage, fingerprint, password.orElse("")), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/refusal")
    @RolesAllowed(Role.inspector)
    public Response refuse(
            String order,
            String stage,
            @RestForm UUID id,
            @RestForm String fingerprint,
            @RestForm List<String> items,
            @RestForm Optional<String> reason,
            @RestForm Optional<String> rejectsDonor) {
        var asked =
                new SignOff.ToRefuse(id, order, stage, fingerprint, items, reason.orElse(""), rejectsDonor.isPresent());
        Form form = Form.of(Map.of("reason", reason.orElse("")));
        return answer(order, stage, form, signOff.refuse(asked, signedIn.actor()));
    }

    private Response answer(String order, String stage, Form form, Outcome<Entry> outcome) {
        return outcome.fold(
                entry -> Redirect.to("/gates/" + order + "/" + stage),
                reasons -> Response.status(Problem.status(reasons))
                        .entity(shown(order, stage, reasons, form))
                        .build());
    }

    private TemplateInstance shown(String order, String stage, List<Reason> refusals, Form form) {
        return look.at(ledger.history(Subject.workOrder(order)), stage, signedIn.now())
                .fold(
                        rules -> GatePages.gate(new GateView(
                                rules,
                                releases.stage(stage).map(Stage::title).orElse(stage),
                                bar.of(rules.order(), signedIn.now().at(), DeferredWork.from(rules.history())),
                                signedIn.is(Role.inspector),
                                refusals,
                                form,
                                UUID.randomUUID())),
                        reasons -> {
                            throw new NotFoundException();
                        });
    }
}

package wainbook.line.milestone.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.milestone.Milestone;
import wainbook.line.milestone.webhook.Arranging;
import wainbook.line.milestone.webhook.Delivery;
import wainbook.line.milestone.webhook.WebhookSaying.WebhookSet;
import wainbook.line.milestone.webhook.Webhooks;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;
import wainbook.works.Role;

/** Which addresses are told of milestones, with which secret, and what came of it. */
@Path("/milestones/webhooks")
@Produces(MediaType.TEXT_HTML)
public class WebhooksPage {

    private static final String HERE = "/milestones/webhooks";
    private static final int SHOWN = 50;
    private static final List<String> ALL =
            Arrays.stream(Milestone.values()).map(Milestone::name).toList();

    private final Ledger ledger;
    private final Arranging arranging;
    private final SignedIn signedIn;

    WebhooksPage(Ledger ledger, Arranging arranging, SignedIn signedIn) {
        this.ledger = ledger;
        this.arranging = arranging;
        this.signedIn = signedIn;
    }

    @GET
    @RolesAllowed({Role.worksEngineer, Role.administrator, Role.auditor})
    public TemplateInstance webhooks() {
        return draw(Filled.fresh(), ALL, Optional.empty());
    }

    /** The answer holds the secret and is nowhere kept: not by us, nor by the browser. */
    @POST
    @RolesAllowed({Role.worksEngineer, Role.administrator})
    public Response set(@RestForm String id, @RestForm String address, @RestForm List<String> milestones) {
        Filled filled = Filled.sent(id).with("address", address);
        List<Milestone> wanted = wanted(milestones);
        Outcome<Entry> outcome = arranging.set(
                new Arranging.ToSet(filled.id(), Optional.empty(), filled.value("address"), wanted, true),
                signedIn.actor());
        return outcome.fold(
                entry -> shown(((WebhookSet) entry.saying()).webhook()),
                entry -> Redirect.to(HERE),
                reasons -> filled.refused(reasons)
                        .again(again ->
                                draw(again, wanted.stream().map(Milestone::name).toList(), Optional.empty())));
    }

    @POST
    @Path("{webhook}/secret")
    @RolesAllowed({Role.worksEngineer, Role.administrator})
    public Response secret(int webhook) {
        return Webhooks.of(ledger.history(Subject.works())).number(webhook).isPresent()
                ? shown(webhook)
                : Redirect.to(HERE);
    }

    @POST
    @Path("{webhook}/switch")
    @RolesAllowed({Role.worksEngineer, Role.administrator})
    public Response change(int webhook, @RestForm String id, @RestForm String on) {
        Filled filled = Filled.sent(id);
        Optional<WebhookSet> known =
                Webhooks.of(ledger.history(Subject.works())).number(webhook);
        return known.map(said -> filled.answer(
                        arranging.set(
                                new Arranging.ToSet(
                                        filled.id(),
                                        Optional.of(webhook),
                                        said.address(),
                                        said.milestones(),
                                        "true".equals(on)),
                                signedIn.actor()),
                        HERE,
                        again -> draw(again, ALL, Optional.empty())))
                .orElseGet(() -> Redirect.to(HERE));
    }

    @POST
    @Path("{webhook}/end")
    @RolesAllowed({Role.worksEngineer, Role.administrator})
    public Response end(int webhook, @RestForm String id) {
        Filled filled = Filled.sent(id);
        return filled.answer(
                arranging.end(new Arranging.ToEnd(filled.id(), webhook), signedIn.actor()),
                HERE,
                again -> draw(again, ALL, Optional.empty()));
    }

    @POST
    @Path("again")
    @RolesAllowed({Role.worksEngineer, Role.administrator})
    public Response again(@RestForm String delivery) {
        arranging.again(Objects.toString(delivery, ""));
        return Redirect.to(HERE + "#deliveries");
    }

    private Response shown(int webhook) {
        var made = new WebhooksView.Made(webhook, arranging.secret(webhook));
        return Response.ok(draw(Filled.fresh(), ALL, Optional.of(made)))
                .header("Cache-Control", "no-store")
                .build();
    }

    private static List<Milestone> wanted(List<String> names) {
        return Arrays.stream(Milestone.values())
                .filter(milestone -> names != null && names.contains(milestone.name()))
                .toList();
    }

    private TemplateInstance draw(Filled filled, List<String> chosen, Optional<WebhooksView.Made> made) {
        return MilestonePages.webhooks(new WebhooksView(
                Webhooks.of(ledger.history(Subject.works())),
                Delivery.latest(SHOWN),
                Delivery.waiting(),
                Delivery.givenUp(),
                filled,
                chosen,
                made,
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.administrator)));
    }
}

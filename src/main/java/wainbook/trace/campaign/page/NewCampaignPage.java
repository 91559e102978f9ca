package wainbook.trace.campaign.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.act.Opening;
import wainbook.trace.campaign.scope.QueryRule;
import wainbook.trace.campaign.scope.Scope;
import wainbook.works.Role;

/** The form that opens a campaign: it shows which vehicles it would be about before anything is kept. */
@Path("/campaigns/new")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
public class NewCampaignPage {

    private final Campaigns campaigns;
    private final Scope scope;
    private final Opening opening;
    private final SignedIn signedIn;

    NewCampaignPage(Campaigns campaigns, Scope scope, Opening opening, SignedIn signedIn) {
        this.campaigns = campaigns;
        this.scope = scope;
        this.opening = opening;
        this.signedIn = signedIn;
    }

    /** What stands in the address stands in the form. */
    @GET
    public TemplateInstance form(@Context UriInfo address) {
        Filled filled = Filled.fresh();
        for (String field : NewView.names()) {
            filled = filled.with(field, address.getQueryParameters().getFirst(field));
        }
        if (filled.value("number").isEmpty()) {
            filled = filled.with("number", campaigns.next());
        }
        return draw(filled.value("code1").isEmpty() ? filled : checked(filled));
    }

    private static Filled checked(Filled filled) {
        TypedQuery typed = TypedQuery.of(filled);
        return typed.filled().right() ? filled.refused(QueryRule.against(typed.query())) : typed.filled();
    }

    private TemplateInstance draw(Filled filled) {
        TypedQuery typed = TypedQuery.of(filled);
        boolean asks =
                typed.filled().right() && QueryRule.against(typed.query()).isEmpty();
        Optional<List<InScope>> found = asks ? Optional.of(scope.find(typed.query())) : Optional.empty();
        return CampaignPages.open(new NewView(filled, found, scope.voided(found.orElse(List.of()))));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response open(MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        if (!form.text("act").equals("open")) {
            return Response.ok(draw(checked(form.filled()))).build();
        }
        Hazard hazard = form.one("hazard", Hazard.values());
        TypedQuery typed = TypedQuery.of(form.filled());
        if (!typed.filled().right()) {
            return typed.filled().again(this::draw);
        }
        var asked = new Opening.ToOpen(
                form.filled().id(),
                form.text("number"),
                form.text("title"),
                form.text("wrong"),
                form.text("remedy"),
                hazard,
                typed.query());
        return form.filled().answer(opening.open(asked, signedIn.actor()), Campaign.path(asked.number()), this::draw);
    }
}

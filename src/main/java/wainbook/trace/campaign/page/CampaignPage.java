package wainbook.trace.campaign.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.act.Adding;
import wainbook.trace.campaign.act.Closing;
import wainbook.trace.campaign.act.Holds;
import wainbook.works.Role;

/** One campaign: its vehicles, what matches since, its letters, its end. */
@Path("/campaigns/{number: " + Campaign.FORM + "}")
@Produces(MediaType.TEXT_HTML)
public class CampaignPage {

    private final CampaignLook look;
    private final Adding adding;
    private final Closing closing;
    private final Holds holds;
    private final Doorkeeper doorkeeper;
    private final SignedIn signedIn;

    CampaignPage(
            CampaignLook look, Adding adding, Closing closing, Holds holds, Doorkeeper doorkeeper, SignedIn signedIn) {
        this.look = look;
        this.adding = adding;
        this.closing = closing;
        this.holds = holds;
        this.doorkeeper = doorkeeper;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance one(
            String number,
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> standing,
            @RestQuery Optional<Integer> page) {
        return CampaignPages.campaign(look.one(
                number,
                search.map(String::strip).orElse(""),
                standing.orElse(""),
                Math.max(1, Math.min(page.orElse(1), 10_000)),
                Filled.fresh(),
                signedIn.now(),
                doorkeeper.doors()));
    }

    private TemplateInstance again(String number, Filled filled) {
        return CampaignPages.campaign(look.one(number, "", "", 1, filled, signedIn.now(), doorkeeper.doors()));
    }

    @GET
    @Path("vehicles.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(String number) {
        return Csv.file(
                "campaign-" + number,
                CampaignsPage.header("campaign.vehiclesHeader"),
                look.lines(look.known(number)).stream().map(VehicleLine::cells).toList());
    }

    @POST
    @Path("vehicles")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response add(String number, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        List<String> ticked = sent.getOrDefault("orders", List.of());
        List<String> typed =
                Stream.of(form.text("order")).filter(text -> !text.isEmpty()).toList();
        var asked = new Adding.ToAdd(
                form.filled().id(),
                number,
                Stream.concat(ticked.stream(), typed.stream()).toList(),
                form.text("reason"));
        return form.filled()
                .answer(
                        adding.add(asked, signedIn.actor()),
                        Campaign.path(number) + "#vehicles",
                        filled -> again(number, filled));
    }

    /** Holds what something came between. Safe to ask for again. */
    @POST
    @Path("holds")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response hold(String number, MultivaluedMap<String, String> sent) {
        Filled filled = SentForm.of(sent).filled();
        var against = holds.put(look.known(number).number(), signedIn.actor());
        return against.isEmpty()
                ? Response.seeOther(URI.create(Campaign.path(number))).build()
                : filled.against(against).again(form -> again(number, form));
    }

    @POST
    @Path("closing")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk, Role.lineManager})
    public Response close(String number, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Closing.ToClose(
                form.filled().id(),
                number,
                form.maybe("seen").filter(text -> text.matches("\\d{1,18}")).map(Long::valueOf),
                form.text("result"),
                form.text("password"));
        return form.filled()
                .answer(closing.close(asked, signedIn.actor()), Campaign.path(number), filled -> again(number, filled));
    }

    @POST
    @Path("reopening")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response reopen(String number, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        return form.filled()
                .answer(
                        closing.reopen(
                                new Closing.ToReopen(form.filled().id(), number, form.text("reopenReason")),
                                signedIn.actor()),
                        Campaign.path(number),
                        filled -> again(number, filled));
    }
}

package wainbook.trace.campaign.page;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Answered;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.CampaignSaying.Hazard;
import wainbook.trace.campaign.CampaignSaying.InScope;
import wainbook.trace.campaign.CampaignSaying.LetterSent;
import wainbook.trace.campaign.CampaignSaying.Opened;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.Standing;
import wainbook.trace.campaign.act.Adding;
import wainbook.trace.campaign.act.Closing;
import wainbook.trace.campaign.act.Opening;
import wainbook.trace.campaign.scope.QueryRule;
import wainbook.trace.campaign.scope.Scope;
import wainbook.works.Role;

/** Campaigns for scripts. */
@Path("/api/v1/campaigns")
public class CampaignApi {

    static final String ONE = "{number: " + Campaign.FORM + "}";
    static final String VEHICLE = ONE + "/vehicles/{order: " + Numbers.FORM + "}";

    /** One in the list. */
    public record Listed(
            String number, String title, Hazard hazard, Instant openedAt, boolean closed, long vehicles, long open) {}

    /** One with how each of its vehicles stands; {@code seen} is what its closing and its letters may carry. */
    public record One(
            String number,
            long seen,
            Opened opened,
            boolean closed,
            List<OnVehicle> vehicles,
            List<LetterSent> letters,
            List<InScope> matchesSince) {}

    /** A vehicle as it stands. */
    public record OnVehicle(
            String order,
            String operator,
            Standing standing,
            int letters,
            List<Answered> answers,
            Optional<String> rework,
            Optional<End> end,
            Optional<Integer> hold) {}

    /**
     * A vehicle that a query finds.
     *
     * @param voided those of its places that were taken back since
     * @param onlyVoided whether nothing that still stands brings it in
     */
    public record Previewed(@JsonUnwrapped InScope vehicle, List<Because> voided, boolean onlyVoided) {}

    /** A campaign to be. */
    public record New(UUID id, String number, String title, String wrong, String remedy, Hazard hazard, Query query) {}

    /** Vehicles to bring into scope. */
    public record Added(UUID id, List<String> orders, String reason) {}

    /** The end of it. */
    public record Close(UUID id, Optional<Long> seen, String result, String password) {}

    /** Why it is opened again. */
    public record Reopen(UUID id, String reason) {}

    private final Ledger ledger;
    private final CampaignLook look;
    private final Scope scope;
    private final Opening opening;
    private final Adding adding;
    private final Closing closing;
    private final SignedIn signedIn;

    CampaignApi(
            Ledger ledger,
            CampaignLook look,
            Scope scope,
            Opening opening,
            Adding adding,
            Closing closing,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.scope = scope;
        this.opening = opening;
        this.adding = adding;
        this.closing = closing;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Listed> all() {
        return look.all().stream()
                .map(line -> new Listed(
                        line.row().number,
                        line.row().title,
                        line.row().hazard,
                        line.row().openedAt,
                        line.row().isClosed,
                        line.vehicles(),
                        line.open()))
                .toList();
    }

    @GET
    @Path(ONE)
    @Authenticated
    public One one(String number) {
        Campaign campaign = look.known(number);
        return ledger.drawing(() -> new One(
                campaign.number(),
                ledger.history(Campaign.subject(number)).number(),
                campaign.said(),
                !campaign.isOpen(),
                look.lines(campaign).stream().map(CampaignApi::vehicle).toList(),
                campaign.letters().stream()
                        .map(entry -> (LetterSent) entry.saying())
                        .toList(),
                adding.since(campaign)));
    }

    private static OnVehicle vehicle(VehicleLine line) {
        return new OnVehicle(
                line.order(),
                line.one().scope().operator(),
                line.standing(),
                line.one().letters().size(),
                line.one().answers().stream()
                        .map(entry -> (Answered) entry.saying())
                        .toList(),
                line.one().reworkOrder(),
                line.one().end().map(said -> said.end()),
                line.hold());
    }

    /** What a query would find now; nothing is kept. */
    @POST
    @Path("preview")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response preview(Query query) {
        var against = QueryRule.against(query);
        return against.isEmpty()
                ? Response.ok(previewed(scope.find(query))).build()
                : Problem.of(against).response();
    }

    private List<Previewed> previewed(List<InScope> found) {
        Set<Because> voided = scope.voided(found);
        return found.stream()
                .map(vehicle -> new Previewed(
                        vehicle,
                        vehicle.because().stream().filter(voided::contains).toList(),
                        !vehicle.because().isEmpty() && voided.containsAll(vehicle.because())))
                .toList();
    }

    @POST
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response open(New body) {
        return Receipt.of(opening.open(
                new Opening.ToOpen(body.id, body.number, body.title, body.wrong, body.remedy, body.hazard, body.query),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/vehicles")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response add(String number, Added body) {
        return Receipt.of(adding.add(new Adding.ToAdd(body.id, number, body.orders, body.reason), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/closing")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk, Role.lineManager})
    public Response close(String number, Close body) {
        return Receipt.of(closing.close(
                new Closing.ToClose(body.id, number, body.seen, body.result, body.password), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/reopening")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response reopen(String number, Reopen body) {
        return Receipt.of(closing.reopen(new Closing.ToReopen(body.id, number, body.reason), signedIn.actor()));
    }
}

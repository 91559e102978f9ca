package wainbook.trace.campaign.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.trace.campaign.CampaignSaying.Answer;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.CampaignSaying.Way;
import wainbook.trace.campaign.act.Answering;
import wainbook.trace.campaign.act.Lettering;
import wainbook.trace.campaign.act.ReworkOrdering;
import wainbook.trace.campaign.act.Settling;
import wainbook.trace.campaign.act.TakingOut;
import wainbook.works.Role;

/** Letters of a campaign and what is done about one vehicle, for scripts. */
@Path("/api/v1/campaigns")
public class CampaignVehicleApi {

    /** What the letters ask, in the works' words. */
    public record Wording(UUID id, String text) {}

    /** A letter that went. */
    public record Sent(UUID id, Optional<Long> seen, String operator, LocalDate on, Way way) {}

    /** What came back. */
    public record Answered(UUID id, Answer answer, LocalDate on, String words) {}

    /** An order by which it comes back, or the one that is there. */
    public record Reworked(UUID id, String rework, String route, String operator, LocalDate promisedOn) {}

    /** How it ended otherwise. */
    public record Ended(UUID id, End end, String reason, Optional<Long> entry, Optional<String> sha256) {}

    /** Something with its reason. */
    public record Because(UUID id, String reason) {}

    /** Nothing but the id. */
    public record Plain(UUID id) {}

    private final Lettering lettering;
    private final Answering answering;
    private final ReworkOrdering reworking;
    private final Settling settling;
    private final TakingOut takingOut;
    private final SignedIn signedIn;

    CampaignVehicleApi(
            Lettering lettering,
            Answering answering,
            ReworkOrdering reworking,
            Settling settling,
            TakingOut takingOut,
            SignedIn signedIn) {
        this.lettering = lettering;
        this.answering = answering;
        this.reworking = reworking;
        this.settling = settling;
        this.takingOut = takingOut;
        this.signedIn = signedIn;
    }

    @POST
    @Path(CampaignApi.ONE + "/letters/text")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response word(String number, Wording body) {
        return Receipt.of(lettering.word(new Lettering.ToWord(body.id, number, body.text), signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.ONE + "/letters")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response send(String number, Sent body) {
        return Receipt.of(lettering.send(
                new Lettering.ToSend(body.id, number, body.seen, body.operator, body.on, body.way), signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/answers")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response answer(String number, String order, Answered body) {
        return Receipt.of(answering.answer(
                new Answering.ToAnswer(body.id, number, order, body.answer, body.on, body.words), signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/rework")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response rework(String number, String order, Reworked body) {
        return Receipt.of(reworking.order(
                new ReworkOrdering.ToOrder(
                        body.id, number, order, body.rework, body.route, body.operator, body.promisedOn),
                signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/end")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response settle(String number, String order, Ended body) {
        return Receipt.of(settling.settle(
                new Settling.ToSettle(body.id, number, order, body.end, body.reason, body.entry, body.sha256),
                signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/out")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response askOut(String number, String order, Because body) {
        return Receipt.of(takingOut.ask(new TakingOut.ToAsk(body.id, number, order, body.reason), signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/out/agreement")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response agree(String number, String order, Plain body) {
        return Receipt.of(takingOut.agree(new TakingOut.ToAgree(body.id, number, order), signedIn.actor()));
    }

    @POST
    @Path(CampaignApi.VEHICLE + "/out/refusal")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response keepIn(String number, String order, Because body) {
        return Receipt.of(
                takingOut.keepIn(new TakingOut.ToKeepIn(body.id, number, order, body.reason), signedIn.actor()));
    }
}

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Answer;
import wainbook.trace.campaign.CampaignSaying.End;
import wainbook.trace.campaign.act.Adding;
import wainbook.trace.campaign.act.Answering;
import wainbook.trace.campaign.act.ReworkOrdering;
import wainbook.trace.campaign.act.Settling;
import wainbook.trace.campaign.act.TakingOut;
import wainbook.works.Role;

/** What is done about one vehicle of a campaign. */
@Path("/campaigns/{number: " + Campaign.FORM + "}/vehicles/{order: " + Numbers.FORM + "}")
@Produces(MediaType.TEXT_HTML)
public class CampaignVehiclePage {

    private static final Set<String> FILE_TYPES = Set.of("image/jpeg", "image/png", "image/webp", "application/pdf");

    private final CampaignLook look;
    private final Answering answering;
    private final ReworkOrdering reworking;
    private final Settling settling;
    private final TakingOut takingOut;
    private final Adding adding;
    private final EvidenceFiles files;
    private final Doorkeeper doorkeeper;
    private final SignedIn signedIn;

    CampaignVehiclePage(
            CampaignLook look,
            Answering answering,
            ReworkOrdering reworking,
            Settling settling,
            TakingOut takingOut,
            Adding adding,
            EvidenceFiles files,
            Doorkeeper doorkeeper,
            SignedIn signedIn) {
        this.look = look;
        this.answering = answering;
        this.reworking = reworking;
        this.settling = settling;
        this.takingOut = takingOut;
        this.adding = adding;
        this.files = files;
        this.doorkeeper = doorkeeper;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance vehicle(String number, String order) {
        return draw(number, order, Filled.fresh());
    }

    private TemplateInstance draw(String number, String order, Filled filled) {
        return CampaignPages.vehicle(look.vehicle(number, order, filled, signedIn.now(), doorkeeper.doors()));
    }

    private Response answer(String number, String order, SentForm form, Outcome<Entry> outcome) {
        return form.filled()
                .answer(outcome, Campaign.path(number) + "/vehicles/" + order, filled -> draw(number, order, filled));
    }

    @POST
    @Path("answers")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response note(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Answering.ToAnswer(
                form.filled().id(),
                number,
                order,
                form.one("answer", Answer.values()),
                form.day("answeredOn"),
                form.text("words"));
        return form.right()
                ? answer(number, order, form, answering.answer(asked, signedIn.actor()))
                : form.filled().again(filled -> draw(number, order, filled));
    }

    @POST
    @Path("rework")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response rework(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        boolean known = form.maybe("known").isPresent();
        var asked = new ReworkOrdering.ToOrder(
                form.filled().id(),
                number,
                order,
                form.maybe("known").orElse(form.text("rework")),
                form.text("route"),
                form.text("operator"),
                known ? LocalDate.EPOCH : form.day("promisedOn"));
        return form.right()
                ? answer(number, order, form, reworking.order(asked, signedIn.actor()))
                : form.filled().again(filled -> draw(number, order, filled));
    }

    @POST
    @Path("end")
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response settle(
            String number,
            String order,
            @RestForm String id,
            @RestForm String end,
            @RestForm String settleReason,
            @RestForm String entry,
            @RestForm String sha256,
            @RestForm("file") FileUpload file) {
        Filled filled = kept(
                Filled.sent(id)
                        .with("end", end)
                        .with("settleReason", settleReason)
                        .with("entry", entry)
                        .with("sha256", sha256),
                file);
        Optional<End> chosen = TypedQuery.one(End.values(), filled.value("end"));
        filled = chosen.isEmpty() ? filled.wrong("end", "page.choose") : filled;
        filled = filled.value("entry").matches("\\d{0,9}") ? filled : filled.wrong("entry", "page.wholeFault");
        if (!filled.right()) {
            return filled.again(again -> draw(number, order, again));
        }
        var asked = new Settling.ToSettle(
                filled.id(),
                number,
                order,
                chosen.orElseThrow(),
                filled.value("settleReason"),
                maybe(filled, "entry").map(Long::valueOf),
                maybe(filled, "sha256"));
        return filled.answer(
                settling.settle(asked, signedIn.actor()),
                Campaign.path(number) + "/vehicles/" + order,
                again -> draw(number, order, again));
    }

    private static Optional<String> maybe(Filled filled, String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty());
    }

    /** Keeps the file even where the form comes back, so that nobody chooses it twice. */
    private Filled kept(Filled filled, FileUpload file) {
        if (file == null || file.size() == 0) {
            return filled;
        }
        if (!FILE_TYPES.contains(file.contentType())) {
            return filled.wrong("file", "campaign.fileType");
        }
        try {
            byte[] content = Files.readAllBytes(file.uploadedFile());
            return filled.with("sha256", files.keep(content, file.contentType()).sha256());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @POST
    @Path("out")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response askOut(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new TakingOut.ToAsk(form.filled().id(), number, order, form.text("outReason"));
        return answer(number, order, form, takingOut.ask(asked, signedIn.actor()));
    }

    @POST
    @Path("out/agreement")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response agree(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new TakingOut.ToAgree(form.filled().id(), number, order);
        return answer(number, order, form, takingOut.agree(asked, signedIn.actor()));
    }

    @POST
    @Path("out/refusal")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response keepIn(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new TakingOut.ToKeepIn(form.filled().id(), number, order, form.text("stayReason"));
        return answer(number, order, form, takingOut.keepIn(asked, signedIn.actor()));
    }

    /** Back into scope: it was taken out or settled, and that does not hold. */
    @POST
    @Path("return")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response again(String number, String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Adding.ToAdd(form.filled().id(), number, List.of(order), form.text("reason"));
        return answer(number, order, form, adding.add(asked, signedIn.actor()));
    }
}

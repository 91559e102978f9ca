package wainbook.trace.campaign.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.Ledger;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.trace.campaign.Campaign;
import wainbook.trace.campaign.CampaignSaying.Way;
import wainbook.trace.campaign.act.Lettering;
import wainbook.trace.campaign.letter.Letter;
import wainbook.trace.campaign.letter.Letters;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The letter to one operator: read, put in other words, printed, noted as sent. */
@Path("/campaigns/{number: " + Campaign.FORM + "}/letter")
@Produces(MediaType.TEXT_HTML)
public class LetterPage {

    private final Ledger ledger;
    private final CampaignLook look;
    private final Letters letters;
    private final Lettering lettering;
    private final Doorkeeper doorkeeper;
    private final SignedIn signedIn;
    private final WorksDay day;

    LetterPage(
            Ledger ledger,
            CampaignLook look,
            Letters letters,
            Lettering lettering,
            Doorkeeper doorkeeper,
            SignedIn signedIn,
            WorksDay day) {
        this.ledger = ledger;
        this.look = look;
        this.letters = letters;
        this.lettering = lettering;
        this.doorkeeper = doorkeeper;
        this.signedIn = signedIn;
        this.day = day;
    }

    @GET
    @Authenticated
    public TemplateInstance letter(String number, @RestQuery Optional<String> operator) {
        return draw(number, operator.orElse(""), Filled.fresh());
    }

    private Letter known(String number, String operator) {
        return letters.next(look.known(number), operator, signedIn.now().at()).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance draw(String number, String operator, Filled filled) {
        Letter letter = known(number, operator);
        Filled worded = filled.value("text").isEmpty()
                ? filled.with("text", letter.campaign().wording().orElseGet(Letter::brought))
                : filled;
        Filled dated = worded.value("sentOn").isEmpty()
                ? worded.with("sentOn", day.of(signedIn.now().at()).toString())
                : worded;
        return CampaignPages.letter(new LetterView(
                letter,
                letters.shown(letter),
                ledger.history(Campaign.subject(number)).number(),
                dated,
                doorkeeper.doors().writes()));
    }

    @GET
    @Path("letter.pdf")
    @Produces("application/pdf")
    @Authenticated
    public Response pdf(String number, @RestQuery Optional<String> operator) {
        Letter letter = known(number, operator.orElse(""));
        return Response.ok(letters.pdf(letter))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "inline; filename=\"" + number + "-" + letter.number() + ".pdf\"")
                .build();
    }

    @POST
    @Path("text")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response word(String number, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        String operator = form.text("operator");
        known(number, operator);
        return form.filled()
                .answer(
                        lettering.word(
                                new Lettering.ToWord(form.filled().id(), number, form.text("text")), signedIn.actor()),
                        path(number, operator),
                        filled -> draw(number, operator, filled));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer, Role.handoverClerk})
    public Response send(String number, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        String operator = form.text("operator");
        var asked = new Lettering.ToSend(
                form.filled().id(),
                number,
                form.maybe("seen").filter(text -> text.matches("\\d{1,18}")).map(Long::valueOf),
                operator,
                form.day("sentOn"),
                form.one("way", Way.values()));
        return form.right()
                ? form.filled()
                        .answer(
                                lettering.send(asked, signedIn.actor()),
                                Campaign.path(number) + "#letters",
                                filled -> draw(number, operator, filled))
                : form.filled().again(filled -> draw(number, operator, filled));
    }

    private static String path(String number, String operator) {
        return Campaign.path(number) + "/letter?operator=" + URLEncoder.encode(operator, StandardCharsets.UTF_8);
    }
}

package wainbook.paper.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
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
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.ledger.Ledger;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;
import wainbook.paper.PaperForm;
import wainbook.paper.Transcribing;
import wainbook.paper.Written;
import wainbook.paper.page.sent.ByHand;
import wainbook.paper.page.sent.SentIsolation;
import wainbook.paper.page.sent.SentItems;
import wainbook.paper.page.sent.SentPermitForm;
import wainbook.paper.page.sheet.SheetLook;
import wainbook.works.shift.WorksDay;

/** Types a form in: the photograph first, so that it stands beside what is typed and is not lost with a fault. */
@Path("/paper/" + FormPage.CODE)
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class TranscribePage {

    private final PaperLook look;
    private final SheetLook sheets;
    private final Transcribing transcribing;
    private final EvidenceFiles files;
    private final Ledger ledger;
    private final WorksDay day;
    private final SignedIn signedIn;

    TranscribePage(
            PaperLook look,
            SheetLook sheets,
            Transcribing transcribing,
            EvidenceFiles files,
            Ledger ledger,
            WorksDay day,
            SignedIn signedIn) {
        this.look = look;
        this.sheets = sheets;
        this.transcribing = transcribing;
        this.files = files;
        this.ledger = ledger;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("transcription")
    public TemplateInstance form(
            String form, @RestQuery Optional<String> vehicle, @RestQuery Optional<String> photograph) {
        PaperForm known = look.known(form);
        Filled filled = Filled.fresh()
                .with("vehicle", known.vehicle().or(() -> vehicle).orElse(new FormLine(known).vehicle()))
                .with(
                        "photograph",
                        photograph.filter(text -> files.file(text).isPresent()).orElse(""))
                .with("date", day.of(known.printed().moment().at()).toString());
        return draw(known, filled);
    }

    private TemplateInstance draw(PaperForm form, Filled filled) {
        return PaperPages.transcribe(
                look.transcribe(form, filled.value("vehicle"), filled.value("photograph"), filled));
    }

    @POST
    @Path("photograph")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response photograph(
            String form, @RestForm String id, @RestForm String vehicle, @RestForm("file") FileUpload file) {
        PaperForm known = look.known(form);
        Filled filled = Filled.sent(id).with("vehicle", known.vehicle().orElse(vehicle));
        if (!filled.value("vehicle").matches(Numbers.FORM)) {
            filled = filled.wrong("vehicle", "paper.vehicleMissing");
        }
        if (file == null
                || file.size() == 0
                || !String.valueOf(file.contentType()).startsWith("image/")) {
            filled = filled.wrong("file", "paper.photographMissing");
        }
        return filled.right()
                ? Redirect.to("/paper/" + known.code() + "/transcription?vehicle=" + filled.value("vehicle")
                        + "&photograph=" + kept(file))
                : filled.again(again -> draw(known, again));
    }

    @POST
    @Path("transcription")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response transcribe(String form, MultivaluedMap<String, String> sent) {
        PaperForm known = look.known(form);
        Filled typed = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            typed = typed.with(field, sent.getFirst(field));
        }
        String vehicle = typed.value("vehicle");
        Numbers.subject(vehicle);
        var hand = new ByHand(typed, day.zone());
        Written written = written(known, vehicle, hand);
        if (!hand.filled().right()) {
            return hand.filled().again(again -> draw(known, again));
        }
        var asked = new Transcribing.ToTranscribe(
                typed.id(), known.number(), vehicle, files.file(typed.value("photograph")), written);
        return hand.filled()
                .answer(
                        transcribing.transcribe(asked, signedIn.actor()),
                        "/paper/" + known.code(),
                        again -> draw(known, again));
    }

    private Written written(PaperForm form, String vehicle, ByHand hand) {
        return switch (form.sort()) {
            case ITEMS ->
                new Written.Items(SentItems.read(
                        hand, sheets.items(form), form.printed().moment().at().truncatedTo(ChronoUnit.MINUTES)));
            case ISOLATION ->
                new Written.Isolation(
                        SentIsolation.read(hand, sheets.isolation(form, ledger.history(Numbers.subject(vehicle)))));
            case PERMIT -> new Written.Permit(SentPermitForm.read(hand));
        };
    }

    private String kept(FileUpload file) {
        try {
            return files.keep(Files.readAllBytes(file.uploadedFile()), file.contentType())
                    .sha256();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

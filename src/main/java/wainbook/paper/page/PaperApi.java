package wainbook.paper.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.isolation.paper.IsolationForm;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.paper.Comparing;
import wainbook.paper.PaperForm;
import wainbook.paper.Printing;
import wainbook.paper.Sort;
import wainbook.paper.Transcribing;
import wainbook.paper.Using;
import wainbook.paper.Written;
import wainbook.permit.PermitForm;
import wainbook.station.paper.PaperLine;

/** Paper forms for scripts. */
@Path("/api/v1/paper")
@Authenticated
public class PaperApi {

    /** A form as it stands. */
    public record One(
            String form, Sort sort, String vehicle, PaperForm.State state, Instant printedAt, String printedBy) {
        static One of(PaperForm form) {
            var line = new FormLine(form);
            return new One(form.code(), form.sort(), line.vehicle(), form.state(), line.printedAt(), line.printedBy());
        }
    }

    /** Blank forms to be printed. */
    public record Blank(UUID id, Sort sort, int count) {}

    /** Forms for vehicles; without any, one for every vehicle at a stage. */
    public record ForVehicles(UUID id, Sort sort, Optional<List<String>> vehicles) {}

    /** Where a form is in use. */
    public record InUse(UUID id, String vehicle) {}

    /** Where it is not in use any more, and how one knows. */
    public record NotInUse(UUID id, String vehicle, String reason) {}

    /** Why a form cannot be used. */
    public record Spoiled(UUID id, String reason) {}

    /** What stands on a form: the part of its sort, and the fingerprint of its photograph. */
    public record Transcription(
            UUID id,
            String vehicle,
            Optional<String> photograph,
            Optional<List<PaperLine>> lines,
            Optional<IsolationForm> isolation,
            Optional<PermitForm> permit) {

        Written written() {
            return isolation
                    .<Written>map(Written.Isolation::new)
                    .or(() -> permit.map(Written.Permit::new))
                    .orElseGet(() -> new Written.Items(lines.orElse(List.of())));
        }
    }

    /** That photograph and transcription are the same. */
    public record Agreement(UUID id, int transcription, String vehicle) {}

    /** That they are not. */
    public record SentBack(UUID id, int transcription, String reason) {}

    private final PaperLook look;
    private final Printing printing;
    private final Using using;
    private final Transcribing transcribing;
    private final Comparing comparing;
    private final EvidenceFiles files;
    private final SignedIn signedIn;

    PaperApi(
            PaperLook look,
            Printing printing,
            Using using,
            Transcribing transcribing,
            Comparing comparing,
            EvidenceFiles files,
            SignedIn signedIn) {
        this.look = look;
        this.printing = printing;
        this.using = using;
        this.transcribing = transcribing;
        this.comparing = comparing;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    public List<One> all() {
        return look.forms().all().stream().map(One::of).toList();
    }

    @GET
    @Path(FormPage.CODE)
    public One one(String form) {
        return One.of(look.known(form));
    }

    @POST
    @Path("blank")
    public Response blank(Blank body) {
        return Receipt.of(printing.print(new Printing.ToPrintBlank(body.id, body.sort, body.count), signedIn.actor()));
    }

    @POST
    @Path("for-vehicles")
    public Response forVehicles(ForVehicles body) {
        return Receipt.of(printing.print(
                new Printing.ToPrintFor(body.id, body.sort, body.vehicles.orElseGet(look::atStages)),
                signedIn.actor()));
    }

    /** Hands a photograph in; a transcription then names it by its fingerprint. */
    @POST
    @Path("photographs")
    @Consumes({"image/jpeg", "image/png", "image/webp"})
    public EvidenceFile photograph(byte[] content, HttpHeaders headers) {
        var type = headers.getMediaType();
        return files.keep(content, type.getType() + "/" + type.getSubtype());
    }

    @POST
    @Path(FormPage.CODE + "/in-use")
    public Response inUse(String form, InUse body) {
        Numbers.subject(body.vehicle);
        return Receipt.of(
                using.note(new Using.ToNote(body.id, look.known(form).number(), body.vehicle), signedIn.actor()));
    }

    @POST
    @Path(FormPage.CODE + "/not-in-use")
    public Response notInUse(String form, NotInUse body) {
        Numbers.subject(body.vehicle);
        return Receipt.of(using.end(
                new Using.ToEnd(body.id, look.known(form).number(), body.vehicle, body.reason), signedIn.actor()));
    }

    @POST
    @Path(FormPage.CODE + "/spoiled")
    public Response spoiled(String form, Spoiled body) {
        return Receipt.of(
                using.spoil(new Using.ToSpoil(body.id, look.known(form).number(), body.reason), signedIn.actor()));
    }

    @POST
    @Path(FormPage.CODE + "/transcription")
    public Response transcribe(String form, Transcription body) {
        return Receipt.of(transcribing.transcribe(
                new Transcribing.ToTranscribe(
                        body.id,
                        look.known(form).number(),
                        body.vehicle,
                        body.photograph.flatMap(files::file),
                        body.written()),
                signedIn.actor()));
    }

    @POST
    @Path(FormPage.CODE + "/agreement")
    public Response agree(String form, Agreement body) {
        Numbers.subject(body.vehicle);
        return Receipt.of(comparing.agree(
                new Comparing.ToAgree(body.id, look.known(form).number(), body.transcription, body.vehicle),
                signedIn.actor()));
    }

    @POST
    @Path(FormPage.CODE + "/sent-back")
    public Response sendBack(String form, SentBack body) {
        return Receipt.of(comparing.sendBack(
                new Comparing.ToSendBack(body.id, look.known(form).number(), body.transcription, body.reason),
                signedIn.actor()));
    }
}

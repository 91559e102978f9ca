package wainbook.station.page;

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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Redirect;
import wainbook.station.Reply;
import wainbook.station.determination.DetermineView;
import wainbook.station.entry.FormReply;
import wainbook.station.entry.Recording;
import wainbook.station.entry.Voiding;
import wainbook.works.Role;

/** The technician's page: one vehicle, one item in hand. */
@Path("/station/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class StationPage {

    private final StationLook look;
    private final Recording recording;
    private final Voiding voiding;
    private final EvidenceFiles files;
    private final SignedIn signedIn;

    StationPage(StationLook look, Recording recording, Voiding voiding, EvidenceFiles files, SignedIn signedIn) {
        this.look = look;
        this.recording = recording;
        this.voiding = voiding;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Response station(
            String order,
            @RestQuery Optional<String> item,
            @RestQuery Optional<String> zone,
            @RestQuery Optional<Long> done) {
        var chosen = new StationLook.Chosen(item, zone);
        return Response.ok(StationPages.station(look.at(order, chosen, done, List.of(), Form.EMPTY, signedIn.now())))
                .build();
    }

    @POST
    @Path("{item}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response record(String order, String item, MultivaluedMap<String, String> sent) {
        Map<String, String> typed = new HashMap<>();
        sent.forEach((field, values) -> typed.put(field, values.get(0)));
        FormReply read = look.reply(order, item, typed);
        return read.form().right()
                ? answer(order, item, read, ask(order, item, read.form(), read.reply()))
                : shown(order, item, read.form(), List.of(), 422);
    }

    @POST
    @Path("{item}/file")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response attach(String order, String item, @RestForm String id, @RestForm("file") FileUpload file) {
        Form form = Form.of(Map.of("id", Filled.sent(id).id().toString()));
        Reply reply = file == null || file.size() == 0
                ? Reply.done()
                : Reply.with().file(kept(file).sha256()).build();
        return answer(order, item, new FormReply(reply, form), ask(order, item, form, reply));
    }

    @POST
    @Path("{item}/void")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response voidEntry(
            String order, String item, @RestForm String id, @RestForm String entry, @RestForm String reason) {
        Filled filled = Filled.sent(id).with("reason", reason);
        UUID voided = Filled.sent(entry).id();
        return voiding.voidEntry(
                        new Voiding.ToVoid(filled.id(), order, voided, filled.value("reason")), signedIn.actor())
                .fold(
                        done -> Redirect.to("/station/" + order + "?item=" + item),
                        reasons -> shown(order, item, filled.form(), reasons, 409));
    }

    private Outcome<Entry> ask(String order, String item, Form form, Reply reply) {
        Optional<String> instrument = Optional.of(form.value("instrument")).filter(code -> !code.isBlank());
        UUID id = Filled.sent(form.value("id")).id();
        return recording.record(new Recording.ToRecord(id, order, item, instrument, reply), signedIn.actor());
    }

    private Response answer(String order, String item, FormReply read, Outcome<Entry> outcome) {
        return outcome.fold(
                entry -> Redirect.to("/station/" + order + "?done=" + entry.number() + look.stay(order, item)),
                reasons -> shown(
                        order,
                        item,
                        read.form(),
                        reasons,
                        reasons.stream().allMatch(DetermineView::next) ? 200 : Problem.status(reasons)));
    }

    private Response shown(String order, String item, Form form, List<Reason> reasons, int status) {
        return Response.status(status)
                .entity(StationPages.station(
                        look.at(order, StationLook.Chosen.item(item), Optional.empty(), reasons, form, signedIn.now())))
                .build();
    }

    private EvidenceFile kept(FileUpload file) {
        try {
            return files.keep(Files.readAllBytes(file.uploadedFile()), file.contentType());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

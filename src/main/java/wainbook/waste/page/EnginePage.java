package wainbook.waste.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.ledger.Ledger;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.waste.act.EngineFate;
import wainbook.works.Role;

/** The record that an engine was made unusable, and its certificate to print. */
@Path("/orders/{order: " + Numbers.FORM + "}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class EnginePage {

    private static final String ENGINE = "strip/engine";

    private static final Set<String> PICTURES = Set.of("image/jpeg", "image/png", "image/webp");

    private final WasteLook look;
    private final EngineFate engine;
    private final Ledger ledger;
    private final EvidenceFiles files;
    private final SignedIn signedIn;

    EnginePage(WasteLook look, EngineFate engine, Ledger ledger, EvidenceFiles files, SignedIn signedIn) {
        this.look = look;
        this.engine = engine;
        this.ledger = ledger;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    @Path(ENGINE)
    public TemplateInstance form(String order) {
        return draw(order, Filled.fresh());
    }

    private TemplateInstance draw(String order, Filled filled) {
        StripView view = look.strip(order, filled, signedIn.now().at(), true);
        return WastePages.engine(view, engine.against(ledger.history(Numbers.subject(order))));
    }

    @GET
    @Path(ENGINE + "/certificate")
    public TemplateInstance certificate(String order) {
        StripView view = look.strip(order, Filled.fresh(), signedIn.now().at(), true);
        if (view.engine().isEmpty()) {
            throw new NotFoundException();
        }
        return WastePages.certificate(view);
    }

    @POST
    @Path(ENGINE)
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response record(
            String order,
            @RestForm String id,
            @RestForm String serial,
            @RestForm String method,
            @RestForm String on,
            @RestForm String ticket,
            @RestForm String permit,
            @RestForm String beforeKept,
            @RestForm String afterKept,
            @RestForm("before") FileUpload before,
            @RestForm("after") FileUpload after) {
        Filled filled = Filled.sent(id)
                .with("serial", serial)
                .with("method", method)
                .with("on", on)
                .with("ticket", ticket)
                .with("permit", permit)
                .with("beforeKept", beforeKept)
                .with("afterKept", afterKept);
        filled = kept(kept(filled, "before", before), "after", after);
        Optional<LocalDate> day = day(filled.value("on"));
        filled = day.isEmpty() ? filled.wrong("on", "page.dayFault") : filled;
        if (!filled.right()) {
            return filled.again(again -> draw(order, again));
        }
        var asked = new EngineFate.ToRecord(
                filled.id(),
                order,
                filled.value("serial"),
                filled.value("method"),
                day.orElseThrow(),
                filled.value("beforeKept"),
                filled.value("afterKept"),
                Optional.of(filled.value("ticket")).filter(text -> !text.isEmpty()),
                Optional.of(filled.value("permit")).filter(text -> !text.isEmpty()));
        return filled.answer(
                engine.record(asked, signedIn.actor()),
                "/orders/" + order + "/strip#engine",
                again -> draw(order, again));
    }

    /** Keeps a picture even where the form comes back, so that nobody chooses it twice. */
    private Filled kept(Filled filled, String field, FileUpload file) {
        if (file == null || file.size() == 0) {
            return filled;
        }
        if (!PICTURES.contains(file.contentType())) {
            return filled.wrong(field, "waste.pictureType");
        }
        try {
            return filled.with(
                    field + "Kept",
                    files.keep(Files.readAllBytes(file.uploadedFile()), file.contentType())
                            .sha256());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }
}

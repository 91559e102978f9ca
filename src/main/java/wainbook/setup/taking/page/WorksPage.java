package wainbook.setup.taking.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Redirect;
import wainbook.process.VehicleFacts;
import wainbook.setup.files.Fault;
import wainbook.setup.files.Found;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksText;
import wainbook.setup.files.WorksZip;
import wainbook.setup.taking.Asker;
import wainbook.setup.taking.Taking;
import wainbook.setup.taking.ToTake;
import wainbook.works.Role;

/** The files of the works: given out, and taken after a look at what they would change. */
@Path("/setup")
@RolesAllowed({Role.administrator, Role.worksEngineer})
@Produces(MediaType.TEXT_HTML)
public class WorksPage {

    private static final String UPLOAD = "works/{upload}";

    @CheckedTemplate(basePath = "setup", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance works(WorksView view);

        static native TemplateInstance faults(UUID upload, List<Fault> faults);

        static native TemplateInstance preview(UUID upload, PreviewView view, Filled filled);
    }

    private final Taking taking;
    private final Uploads uploads;
    private final SignedIn signedIn;

    WorksPage(Taking taking, Uploads uploads, SignedIn signedIn) {
        this.taking = taking;
        this.uploads = uploads;
        this.signedIn = signedIn;
    }

    @GET
    @Path("works")
    public TemplateInstance works(@RestQuery boolean taken) {
        return Templates.works(new WorksView(Form.EMPTY, taken, taking.begun()));
    }

    @GET
    @Path("works.zip")
    @Produces("application/zip")
    public Response giveOut() {
        return Response.ok(WorksZip.pack(WorksText.of(taking.givenOut())))
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"works.zip\"")
                .build();
    }

    @POST
    @Path("works")
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    public Response send(@RestForm("file") FileUpload file) {
        if (file == null || file.size() == 0) {
            Form form = Form.EMPTY.wrong("file", "setup.fileNone");
            return Response.status(422)
                    .entity(Templates.works(new WorksView(form, false, taking.begun())))
                    .build();
        }
        try {
            Found found = WorksZip.read(Files.readAllBytes(file.uploadedFile()), VehicleFacts.PREDICATES);
            return Redirect.to("/setup/works/" + uploads.keep(asker().who(), found));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @GET
    @Path(UPLOAD)
    public TemplateInstance look(UUID upload) {
        return found(upload)
                .fold(files -> preview(upload, files, Filled.fresh()), faults -> Templates.faults(upload, faults));
    }

    @GET
    @Path(UPLOAD + "/faults.csv")
    @Produces("text/csv")
    public Response faults(UUID upload) {
        List<Fault> faults = found(upload).fold(files -> List.of(), all -> all);
        return Csv.file(
                "faults",
                List.of(Words.of("setup.faultColumns").split(" ")),
                faults.stream()
                        .map(fault -> List.of(
                                fault.place().file(),
                                fault.line(),
                                fault.column(),
                                fault.found(),
                                fault.expected(),
                                fault.text()))
                        .toList());
    }

    @POST
    @Path(UPLOAD + "/taken")
    public Response take(
            UUID upload,
            @RestForm String id,
            @RestForm String fingerprint,
            @RestForm String second,
            @RestForm String secondPassword) {
        Filled filled = Filled.sent(id).with("second", second);
        WorksFiles files = found(upload).fold(whole -> whole, faults -> {
            throw new NotFoundException();
        });
        var confirming = new ToTake.Second(filled.value("second"), Objects.toString(secondPassword, ""));
        var asked = new ToTake(filled.id(), files, Objects.toString(fingerprint, ""), Optional.of(confirming));
        return taking.take(asked, asker())
                .fold(
                        entry -> {
                            uploads.done(upload);
                            return Redirect.to("/setup/works?taken=true");
                        },
                        reasons -> filled.refused(reasons).again(again -> preview(upload, files, again)));
    }

    private TemplateInstance preview(UUID upload, WorksFiles files, Filled filled) {
        return Templates.preview(upload, new PreviewView(taking.preview(files, asker())), filled);
    }

    private Found found(UUID upload) {
        return uploads.of(upload, asker().who()).orElseThrow(NotFoundException::new);
    }

    private Asker asker() {
        return new Asker(signedIn.actor(), signedIn.is(Role.administrator));
    }
}

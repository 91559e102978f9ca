package wainbook.order.specification.page;

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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.order.specification.Specification;
import wainbook.order.specification.Specifying;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** The duty of an order, the vehicle it is worked for, the table of packs, and the choice. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/specification")
@Produces(MediaType.TEXT_HTML)
public class SpecificationPage {

    private final Drawing drawing;
    private final Specifying specifying;
    private final TraceKept traces;
    private final SignedIn signedIn;

    SpecificationPage(Drawing drawing, Specifying specifying, TraceKept traces, SignedIn signedIn) {
        this.drawing = drawing;
        this.specifying = specifying;
        this.traces = traces;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance specification(String order, @RestQuery Optional<String> packs) {
        return SpecificationPages.specification(drawing.of(order).packs(packs).view());
    }

    @GET
    @Path("table.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(String order, @RestQuery Optional<String> packs) {
        List<List<String>> rows = drawing.of(order).packs(packs).view().rows().stream()
                .map(TableCells::of)
                .toList();
        return Csv.file(
                "packs-" + order, Arrays.asList(Words.of("order.tableCsv").split(";")), rows);
    }

    @POST
    @Path("duty")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response duty(String order, MultivaluedMap<String, String> sent) {
        Drawing.Page page = drawing.of(order);
        var figures = new Figures(Drawing.filled(sent));
        Duty duty = DutyForm.read(
                figures,
                page.specification().duty().map(Specification.Said::what).flatMap(Duty::recorded));
        Filled filled = figures.filled();
        if (!figures.right()) {
            return filled.again(again -> page.duty(again).draw());
        }
        var asked = new Specifying.ToStateDuty(filled.id(), order, duty, Drawing.judged(filled));
        return filled.answer(
                specifying.state(asked, signedIn.actor()),
                page.path(),
                again -> page.duty(again).draw());
    }

    @POST
    @Path("vehicle")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response vehicle(String order, MultivaluedMap<String, String> sent) {
        Drawing.Page page = drawing.of(order);
        var figures = new Figures(Drawing.filled(sent));
        ChassisFigures chassis = ChassisForm.read(figures);
        Filled filled = figures.filled();
        if (!figures.right()) {
            return filled.again(again -> page.vehicle(again).draw());
        }
        var asked = new Specifying.ToStateChassis(filled.id(), order, chassis, Drawing.judged(filled));
        return filled.answer(
                specifying.state(asked, signedIn.actor()),
                page.path(),
                again -> page.vehicle(again).draw());
    }

    @POST
    @Path("trace")
    @Consumes({MediaType.MULTIPART_FORM_DATA, MediaType.APPLICATION_FORM_URLENCODED})
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response trace(
            String order,
            @RestForm String id,
            @RestForm String judged,
            @RestForm String timesADay,
            @RestForm String traceLoadPercent,
            @RestForm String drop,
            @RestForm("file") FileUpload file) {
        Drawing.Page page = drawing.of(order);
        Filled sent = Filled.sent(id)
                .with("judged", judged)
                .with("timesADay", timesADay)
                .with("traceLoadPercent", traceLoadPercent)
                .with("drop", drop);
        TraceKept.Read read = traces.read(sent, content(file), page.specification());
        Filled filled = read.filled();
        if (read.duty().isEmpty()) {
            return filled.again(again -> page.trace(again, read.faults()).draw());
        }
        var asked = new Specifying.ToStateDuty(filled.id(), order, read.duty().get(), Drawing.judged(filled));
        return filled.answer(
                specifying.state(asked, signedIn.actor()),
                page.path(),
                again -> page.trace(again, List.of()).draw());
    }

    @POST
    @Path("choice")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response choose(
            String order,
            @RestForm String id,
            @RestForm String judged,
            @RestForm String library,
            @RestForm String packs,
            @RestForm String packType) {
        Drawing.Page page = drawing.of(order).packs(Optional.ofNullable(packType));
        Filled filled = Filled.sent(id).with("judged", judged).with("packs", packs);
        var asked = new Specifying.ToSpecify(
                filled.id(), order, (int) Drawing.number(packs), String.valueOf(packType), Drawing.judged(filled), (int)
                        Drawing.number(library));
        return filled.answer(
                specifying.specify(asked, signedIn.actor()),
                page.path(),
                again -> page.choice(again).draw());
    }

    private static Optional<String> content(FileUpload file) {
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        try {
            return Optional.of(Files.readString(file.uploadedFile(), StandardCharsets.ISO_8859_1))
                    .map(text -> new String(text.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

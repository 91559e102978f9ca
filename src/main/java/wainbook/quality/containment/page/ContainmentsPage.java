package wainbook.quality.containment.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.quality.containment.Closing;
import wainbook.quality.containment.Containment;
import wainbook.quality.containment.Containments;
import wainbook.quality.containment.Opening;
import wainbook.quality.containment.Telling;
import wainbook.quality.containment.WorkingOut;
import wainbook.quality.containment.page.view.ContainmentsView;
import wainbook.quality.containment.page.view.ReadingCells;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.works.Role;

/** All containments, and one with every vehicle and reading that it touches. */
@Path("/quality")
@Produces(MediaType.TEXT_HTML)
public class ContainmentsPage {

    static final String CODE = "{code: [A-Za-z0-9][A-Za-z0-9._-]{0,110}}";

    private final Ledger ledger;
    private final Containments containments;
    private final ContainmentLook look;
    private final Opening opening;
    private final WorkingOut workingOut;
    private final Telling telling;
    private final Closing closing;
    private final SignedIn signedIn;

    ContainmentsPage(
            Ledger ledger,
            Containments containments,
            ContainmentLook look,
            Opening opening,
            WorkingOut workingOut,
            Telling telling,
            Closing closing,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.containments = containments;
        this.look = look;
        this.opening = opening;
        this.workingOut = workingOut;
        this.telling = telling;
        this.closing = closing;
        this.signedIn = signedIn;
    }

    @GET
    @Path("containments")
    @Authenticated
    public TemplateInstance all(@RestQuery Optional<String> search, @RestQuery Optional<String> sort) {
        return draw(search, sort, Form.EMPTY);
    }

    private TemplateInstance draw(Optional<String> search, Optional<String> sort, Form form) {
        String text = search.map(String::strip).orElse("");
        return ContainmentPages.containments(new ContainmentsView(
                ContainmentsView.Line.all(text, sort.orElse("")),
                containments.unopened(),
                form.with("search", text).with("sort", sort.orElse("")),
                mayOpen()));
    }

    @GET
    @Path("containments.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> sort) {
        return Csv.file(
                "containments",
                header("quality.csvHeader"),
                ContainmentsView.Line.all(search.map(String::strip).orElse(""), sort.orElse("")).stream()
                        .map(ContainmentsView.Line::cells)
                        .toList());
    }

    /** What a crash left unopened. Safe to ask for again. */
    @POST
    @Path("containments/unopened")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response openLacking(@RestForm String instrument, @RestForm String entry) {
        Entry cause = containments.unopened().stream()
                .filter(one -> one.instrument().equals(instrument)
                        && one.entry().id().toString().equals(entry))
                .map(Containments.Unopened::entry)
                .findFirst()
                .orElseThrow(NotFoundException::new);
        return Filled.fresh()
                .answer(
                        opening.because(instrument, cause, signedIn.actor()),
                        "/quality/containments",
                        again -> draw(Optional.empty(), Optional.empty(), again.form()));
    }

    @GET
    @Path("containments/" + CODE)
    @Authenticated
    public TemplateInstance one(String code, @RestQuery Optional<Integer> page) {
        return draw(code, page.orElse(1), Filled.fresh());
    }

    private TemplateInstance draw(String code, int page, Filled filled) {
        return ContainmentPages.containment(
                look.of(code, Math.max(1, page), filled, signedIn.is(Role.qualityEngineer), mayOpen()));
    }

    @GET
    @Path("containments/" + CODE + "/readings.csv")
    @Produces("text/csv")
    @Authenticated
    public Response readings(String code) {
        look.known(code);
        List<List<String>> rows = ledger.drawing(() -> VehicleDoubtRow.of(code).stream()
                .map(row -> look.vehicle(code, row.workOrder))
                .flatMap(vehicle -> vehicle.readings().stream().map(one -> ReadingCells.of(vehicle, one)))
                .toList());
        return Csv.file("containment-" + code, header("quality.readingsHeader"), rows);
    }

    /** Tells the vehicles that have not heard. */
    @POST
    @Path("containments/" + CODE + "/completion")
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response complete(String code, @RestForm String id) {
        var lacking = telling.complete(look.known(code), signedIn.actor());
        Filled filled = Filled.sent(id);
        return lacking.isEmpty()
                ? filled.answer(Outcome.done(code), "/quality/containments/" + code, again -> draw(code, 1, again))
                : filled.against(lacking).again(again -> draw(code, 1, again));
    }

    /** Works the readings out with the figures of a calibration that came since. */
    @POST
    @Path("containments/" + CODE + "/working-out")
    @RolesAllowed(Role.qualityEngineer)
    public Response workOut(String code, @RestForm String id, @RestForm String figures) {
        Containment containment = look.known(code);
        Filled filled = Filled.sent(id);
        Entry calibration = ledger.history(containment.opened().subject())
                .entry(uuid(figures))
                .orElseThrow(NotFoundException::new);
        return filled.answer(
                workingOut.workOut(containment, calibration, signedIn.actor()),
                "/quality/containments/" + code,
                again -> draw(code, 1, again));
    }

    @POST
    @Path("containments/" + CODE + "/closing")
    @RolesAllowed(Role.qualityEngineer)
    public Response close(String code, @RestForm String id, @RestForm String reason) {
        Subject stream = look.known(code).opened().subject();
        Filled filled = Filled.sent(id).with("reason", reason);
        return filled.answer(
                closing.close(new Closing.ToClose(filled.id(), stream, code, filled.value("reason")), signedIn.actor()),
                "/quality/containments/" + code,
                again -> draw(code, 1, again));
    }

    private boolean mayOpen() {
        return signedIn.is(Role.qualityEngineer) || signedIn.is(Role.worksEngineer);
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(String.valueOf(text));
        } catch (IllegalArgumentException noId) {
            throw new NotFoundException();
        }
    }

    private static List<String> header(String key) {
        return Arrays.asList(Words.of(key).split(";"));
    }
}

package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.process.CalibrationLibrary;
import wainbook.process.ProcessSaying.CalibrationsReleased;
import wainbook.process.VehicleKinds;
import wainbook.works.Role;

/** The calibrations that vehicles may be given, with those withdrawn since. */
@Path("/process/calibrations")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class CalibrationsPage {

    private final Ledger ledger;
    private final VehicleKinds kinds;
    private final SignedIn signedIn;

    CalibrationsPage(Ledger ledger, VehicleKinds kinds, SignedIn signedIn) {
        this.ledger = ledger;
        this.kinds = kinds;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance calibrations(@RestQuery Optional<String> kind) {
        return ProcessPages.calibrations(view(kind));
    }

    @GET
    @Path("file.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> kind) {
        CalibrationsView shown = view(kind);
        return Csv.file(
                "calibrations",
                Arrays.asList(Words.of("process.calibrationsCsv").split(";")),
                shown.rows().stream().map(shown::cells).toList());
    }

    private CalibrationsView view(Optional<String> kind) {
        History works = ledger.history(Subject.works());
        return new CalibrationsView(
                CalibrationLibrary.of(works),
                kind.orElse(""),
                kinds::title,
                works.saying(CalibrationsReleased.class)
                        .reduce((former, latter) -> latter)
                        .map(Entry::moment),
                signedIn.is(Role.administrator) || signedIn.is(Role.worksEngineer));
    }
}

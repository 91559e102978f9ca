package wainbook.works.instruments.drift;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import wainbook.ledger.Ledger;
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.shift.WorksDay;

/** Which instruments to send away first. */
@Path("/instruments")
@Authenticated
public class DuePage {

    private final Ledger ledger;
    private final WorksDay day;
    private final SignedIn signedIn;

    DuePage(Ledger ledger, WorksDay day, SignedIn signedIn) {
        this.ledger = ledger;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("due")
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance due() {
        return DuePages.due(list());
    }

    @GET
    @Path("due.csv")
    @Produces("text/csv")
    public Response csv() {
        List<List<String>> rows = list().lines().stream()
                .map(line -> List.of(
                        line.instrument().code(),
                        line.instrument().title(),
                        line.due().toString(),
                        line.odds().map(odds -> String.valueOf(odds)).orElse(""),
                        String.valueOf(line.calibrations())))
                .toList();
        return Csv.file(
                "instruments-due", Arrays.asList(Words.of("works.dueHeader").split(";")), rows);
    }

    private DueList list() {
        return ledger.drawing(() -> DueList.of(ledger, day.of(signedIn.now().at())));
    }
}

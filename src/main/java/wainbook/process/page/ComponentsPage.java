package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.process.ComponentLibrary;
import wainbook.process.VehicleKinds;
import wainbook.works.Role;

/** The parts that conversions take out and put in, as in force or as they were in a revision. */
@Path("/process/components")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ComponentsPage {

    private final Ledger ledger;
    private final VehicleKinds kinds;
    private final SignedIn signedIn;

    ComponentsPage(Ledger ledger, VehicleKinds kinds, SignedIn signedIn) {
        this.ledger = ledger;
        this.kinds = kinds;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance components(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<Integer> revision) {
        return ProcessPages.components(view(search, kind, revision));
    }

    @GET
    @Path("file.csv")
    @Produces("text/csv")
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<Integer> revision) {
        ComponentsView shown = view(search, kind, revision);
        return Csv.file(
                "components",
                Arrays.asList(Words.of("process.componentsCsv").split(";")),
                shown.rows().stream().map(shown::cells).toList());
    }

    private ComponentsView view(Optional<String> search, Optional<String> kind, Optional<Integer> revision) {
        History works = ledger.history(Subject.works());
        ComponentLibrary inForce = ComponentLibrary.of(works);
        ComponentLibrary shown = revision.map(
                        number -> ComponentLibrary.of(works, number).orElseThrow(NotFoundException::new))
                .orElse(inForce);
        return new ComponentsView(
                shown,
                inForce.revision(),
                search.map(String::strip).orElse(""),
                kind.orElse(""),
                kinds::title,
                signedIn.is(Role.administrator) || signedIn.is(Role.worksEngineer));
    }
}

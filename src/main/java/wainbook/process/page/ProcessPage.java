package wainbook.process.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** The whole process on one page: stages, sheets, joints, routes, isolation plans, and the drafts in hand. */
@Path("/process")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ProcessPage {

    private final Papers papers;
    private final SignedIn signedIn;

    ProcessPage(Papers papers, SignedIn signedIn) {
        this.papers = papers;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance process(@RestQuery Optional<String> search) {
        return ProcessPages.process(view(search));
    }

    /** The check sheets as a list. */
    @GET
    @Path("sheets.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> search) {
        List<List<String>> rows = view(search).sheets().stream()
                .map(row -> List.of(
                        row.what().code(),
                        row.what().title(),
                        row.what().stage(),
                        "" + row.revision(),
                        "" + row.what().items().size(),
                        "" + row.what().plannedMinutes()))
                .toList();
        return Csv.file(
                "check-sheets", Arrays.asList(Words.of("process.csvHeader").split(";")), rows);
    }

    private ProcessView view(Optional<String> search) {
        boolean mayDraft = signedIn.is(Role.worksEngineer) || signedIn.is(Role.qualityEngineer);
        return new ProcessView(papers.all(), search.map(String::strip).orElse(""), mayDraft);
    }
}

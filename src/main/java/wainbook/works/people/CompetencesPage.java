package wainbook.works.people;

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
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.shift.WorksDay;

/** Who holds which competence, and until when: as a page and as a file. */
@Path("/people")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class CompetencesPage {

    private final Roster roster;
    private final WorksDay day;
    private final SignedIn signedIn;

    CompetencesPage(Roster roster, WorksDay day, SignedIn signedIn) {
        this.roster = roster;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("competences")
    public TemplateInstance matrix(@RestQuery Optional<String> competence) {
        return PeoplePages.matrix(of(competence));
    }

    @GET
    @Path("competences.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> competence) {
        return Csv.file(
                "competences",
                Arrays.asList(Words.of("works.competencesHeader").split(";")),
                of(competence).lines());
    }

    private Matrix of(Optional<String> competence) {
        return new Matrix(
                roster.found("", Optional.empty(), false),
                day.of(signedIn.now().at()),
                competence.map(String::strip).orElse(""),
                PersonPage.mayTrain(signedIn));
    }
}

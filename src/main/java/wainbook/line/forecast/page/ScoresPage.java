package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import wainbook.line.forecast.kept.BackTests;
import wainbook.line.forecast.score.Scoring;
import wainbook.page.Csv;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Redirect;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** How good earlier forecasts were. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ScoresPage {

    /** A page with a running back-test is drawn again by itself. */
    private static final int LOOK_AGAIN_S = 2;

    private static final int DAYS = 60;

    private final Scoring scoring;
    private final BackTests tests;
    private final WorksDay day;
    private final SignedIn signedIn;

    private final Optional<String> keepAt;

    ScoresPage(
            Scoring scoring,
            BackTests tests,
            WorksDay day,
            SignedIn signedIn,
            @ConfigProperty(name = "wainbook.forecast.keep-at") Optional<String> keepAt) {
        this.keepAt = keepAt;
        this.scoring = scoring;
        this.tests = tests;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("forecast/scores")
    public Response scores() {
        ScoresView view = view();
        Response.ResponseBuilder page = Response.ok(ForecastPages.scores(view));
        return view.running() ? page.header("Refresh", LOOK_AGAIN_S).build() : page.build();
    }

    @GET
    @Path("forecast/scores.csv")
    @Produces("text/csv")
    public Response csv() {
        return Csv.file(
                "forecast-scores", Arrays.asList(Words.of("line.scoresHeader").split(";")), view().cells());
    }

    @POST
    @Path("forecast/scores/back-test")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response backTest() {
        tests.begin(signedIn.now().at(), DAYS);
        return Redirect.to("/forecast/scores#afterwards");
    }

    private ScoresView view() {
        Instant now = signedIn.now().at();
        Optional<BackTests.Progress> progress = tests.progress();
        return new ScoresView(
                scoring.kept(now),
                progress,
                progress.filter(BackTests.Progress::ended).map(done -> scoring.of(done.said(), done.begun())),
                new Formats(day.zone()),
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                keepAt);
    }
}

package wainbook.line.forecast.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.line.forecast.kept.BackTests;
import wainbook.line.forecast.score.Card;
import wainbook.line.forecast.score.Scoring;
import wainbook.page.SignedIn;

/** How good earlier forecasts were, for scripts. */
@Path("/api/v1/forecast/scores")
public class ScoresApi {

    /**
     * By horizon.
     *
     * @param kept of forecasts that were kept on their mornings
     * @param workedOutAfterwards of the back-test made last; absent if none has ended since the program began
     */
    public record Answer(Instant at, List<Card> kept, Optional<List<Card>> workedOutAfterwards) {}

    private final Scoring scoring;
    private final BackTests tests;
    private final SignedIn signedIn;

    ScoresApi(Scoring scoring, BackTests tests, SignedIn signedIn) {
        this.scoring = scoring;
        this.tests = tests;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Answer scores() {
        Instant now = signedIn.now().at();
        return new Answer(
                now,
                scoring.kept(now).cards(),
                tests.progress()
                        .filter(BackTests.Progress::ended)
                        .map(done -> scoring.of(done.said(), done.begun()).cards()));
    }
}

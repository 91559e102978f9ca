package wainbook.line.forecast.page;

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
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.score.Scoring;
import wainbook.order.WorkOrderRow;
import wainbook.page.Csv;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.shift.WorksDay;

/** When each vehicle will probably be finished. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ForecastPage {

    private static final String BY_LINE = "line";

    private final Forecasts forecasts;
    private final WorksDay day;
    private final SignedIn signedIn;
    private final Scoring scoring;

    ForecastPage(Forecasts forecasts, WorksDay day, SignedIn signedIn, Scoring scoring) {
        this.scoring = scoring;
        this.forecasts = forecasts;
        this.day = day;
        this.signedIn = signedIn;
    }

    /** @param by {@code line} for the order of the line; the lowest odds come first otherwise */
    @GET
    @Path("forecast")
    public TemplateInstance page(@RestQuery Optional<String> by) {
        return ForecastPages.forecast(view(by));
    }

    @GET
    @Path("forecast.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> by) {
        return Csv.file(
                "forecast", Arrays.asList(Words.of("line.forecastHeader").split(";")), view(by).cells());
    }

    private ForecastView view(Optional<String> by) {
        return new ForecastView(
                forecasts.at(signedIn.now().at()),
                new Formats(day.zone()),
                by.filter(BY_LINE::equals).isPresent(),
                new Widened(scoring.kept(signedIn.now().at())),
                WorkOrderRow.back());
    }
}

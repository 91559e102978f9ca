package wainbook.quality.chart.page;

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
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.quality.chart.Charted;
import wainbook.quality.chart.Settling;
import wainbook.quality.chart.Settling.ToSettle;
import wainbook.works.Role;

/** All charts of what is measured, and one with what it says. */
@Path("/quality")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ChartsPage {

    private static final String ONE = "charts/{sort}/{code}";

    private final ChartLook look;
    private final Settling settling;
    private final SignedIn signedIn;

    ChartsPage(ChartLook look, Settling settling, SignedIn signedIn) {
        this.look = look;
        this.settling = settling;
        this.signedIn = signedIn;
    }

    @GET
    @Path("charts")
    public TemplateInstance all(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> sort,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<String> stage) {
        return ChartPages.charts(look.all(form(search, sort, kind, stage)));
    }

    @GET
    @Path("charts.csv")
    @Produces("text/csv")
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> sort,
            @RestQuery Optional<String> kind,
            @RestQuery Optional<String> stage) {
        return Csv.file(
                "charts",
                header("quality.chartsHeader"),
                look.all(form(search, sort, kind, stage)).lines().stream()
                        .map(ChartsView.Line::cells)
                        .toList());
    }

    private static Form form(
            Optional<String> search, Optional<String> sort, Optional<String> kind, Optional<String> stage) {
        return Form.EMPTY
                .with("search", search.map(String::strip).orElse(""))
                .with("sort", sort.orElse(""))
                .with("kind", kind.orElse(""))
                .with("stage", stage.orElse(""));
    }

    @GET
    @Path(ONE)
    public TemplateInstance one(String sort, String code, @RestQuery Optional<String> kind) {
        return draw(sort, code, kind.orElse(""), Filled.fresh());
    }

    private TemplateInstance draw(String sort, String code, String kind, Filled filled) {
        return ChartPages.chart(look.one(charted(sort, code), kind, filled));
    }

    @GET
    @Path(ONE + "/readings.csv")
    @Produces("text/csv")
    public Response readings(String sort, String code, @RestQuery Optional<String> kind) {
        ChartView view = look.one(charted(sort, code), kind.orElse(""), Filled.fresh());
        return Csv.file(
                "chart-" + sort + "-" + code.replace(':', '-'),
                header("quality.chartHeader"),
                view.rows().stream().map(ReadingRow::cells).toList());
    }

    /** What stands on the chart is settled, with words. */
    @POST
    @Path(ONE + "/settling")
    @RolesAllowed(Role.qualityEngineer)
    public Response settle(String sort, String code, @RestForm String id, @RestForm String words) {
        Charted charted = charted(sort, code);
        Filled filled = Filled.sent(id).with("words", words);
        return look.standing(charted)
                .map(standing -> filled.answer(
                        settling.settle(ToSettle.of(standing, filled.value("words")), signedIn.actor()),
                        charted.path(),
                        again -> draw(sort, code, "", again)))
                .orElseGet(() -> Response.seeOther(URI.create(charted.path())).build());
    }

    private static Charted charted(String sort, String code) {
        return Charted.of(sort, code).orElseThrow(NotFoundException::new);
    }

    private static List<String> header(String key) {
        return Arrays.asList(Words.of(key).split(";"));
    }
}

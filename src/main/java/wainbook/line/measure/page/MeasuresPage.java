package wainbook.line.measure.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import wainbook.line.measure.Measures;
import wainbook.line.measure.Pasts;
import wainbook.line.measure.Period;
import wainbook.page.Csv;
import wainbook.page.Form;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.process.VehicleKinds;
import wainbook.works.shift.WorksDay;

/** What came of the line over any period. */
@Path("/line")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class MeasuresPage {

    private final Pasts pasts;
    private final VehicleKinds kinds;
    private final WorksDay day;
    private final SignedIn signedIn;

    MeasuresPage(Pasts pasts, VehicleKinds kinds, WorksDay day, SignedIn signedIn) {
        this.pasts = pasts;
        this.kinds = kinds;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    @Path("measures")
    public TemplateInstance page(@BeanParam AskedPeriod asked) {
        return MeasurePages.measures(view(asked));
    }

    @GET
    @Path("measures.csv")
    @Produces("text/csv")
    public Response csv(@BeanParam AskedPeriod asked) {
        return Csv.file("measures", header("line.measuresHeader"), tables(asked).figures());
    }

    @GET
    @Path("measures/stations.csv")
    @Produces("text/csv")
    public Response stations(@BeanParam AskedPeriod asked) {
        return Csv.file(
                "stations", header("line.measuresStationsHeader"), tables(asked).stations());
    }

    @GET
    @Path("measures/lost.csv")
    @Produces("text/csv")
    public Response lost(@BeanParam AskedPeriod asked) {
        return Csv.file("lost", header("line.measuresLostHeader"), tables(asked).lost());
    }

    @GET
    @Path("measures/calls.csv")
    @Produces("text/csv")
    public Response calls(@BeanParam AskedPeriod asked) {
        return Csv.file(
                "calls", header("line.measuresCallsHeader"), tables(asked).calls());
    }

    /** What was asked wrongly stands in the form, and the usual days are shown meanwhile. */
    private MeasuresTables tables(AskedPeriod asked) {
        return new MeasuresTables(view(asked));
    }

    private MeasuresView view(AskedPeriod asked) {
        Instant now = signedIn.now().at();
        LocalDate today = day.of(now);
        Form form = asked.form(day, today);
        Form used = form.right() ? form : new AskedPeriod().form(day, today);
        Period period = Period.of(LocalDate.parse(used.value("from")), LocalDate.parse(used.value("to")), day, now);
        Measures measures = pasts.of(period, asked.kind(), now);
        return new MeasuresView(
                measures,
                form,
                pasts.vehicleKinds().stream()
                        .map(kind -> new Option(kind, kinds.title(kind)))
                        .toList(),
                new Formats(day.zone()),
                today);
    }

    private static List<String> header(String key) {
        return Arrays.asList(Words.of(key).split(";"));
    }
}

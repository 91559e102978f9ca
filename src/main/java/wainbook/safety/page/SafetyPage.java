package wainbook.safety.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.page.api.Redirect;
import wainbook.safety.SafetySaying.NearMissReported;
import wainbook.safety.miss.Reporting;
import wainbook.safety.page.view.MissLine;
import wainbook.safety.page.view.StopLine;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.Stopping;

/** Near misses and stops of the works, and the two touches by which they are told. */
@Path("/safety")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class SafetyPage {

    private final SafetyLook look;
    private final Reporting reporting;
    private final Stopping stopping;
    private final SignedIn signedIn;

    SafetyPage(SafetyLook look, Reporting reporting, Stopping stopping, SignedIn signedIn) {
        this.look = look;
        this.reporting = reporting;
        this.stopping = stopping;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance safety() {
        return SafetyPages.safety(look.view(signedIn.now(), List.of()));
    }

    @GET
    @Path("near-misses.csv")
    @Produces("text/csv")
    public Response misses() {
        return csv(
                "near-misses",
                "safety.missHeader",
                look.misses(signedIn.now()).stream().map(MissLine::cells).toList());
    }

    @GET
    @Path("stops.csv")
    @Produces("text/csv")
    public Response stops() {
        return csv(
                "safety-stops",
                "safety.stopHeader",
                look.stops().stream().map(StopLine::cells).toList());
    }

    private static Response csv(String name, String header, List<List<String>> rows) {
        return Csv.file(name, Arrays.asList(Words.of(header).split(";")), rows);
    }

    @POST
    @Path("near-miss")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response report(MultivaluedMap<String, String> form) {
        Touch touch = Touch.sent(form.getFirst("missId"), form);
        return answer(reporting
                .report(touch.report(), touch.by(signedIn.actor()))
                .map(entry -> "/safety/near-misses/" + ((NearMissReported) entry.saying()).nearMiss()));
    }

    @POST
    @Path("stop")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response stop(MultivaluedMap<String, String> form) {
        Touch touch = Touch.sent(form.getFirst("stopId"), form);
        Outcome<Entry> stopped = stopping.stop(touch.stop(), touch.by(signedIn.actor()));
        return answer(stopped.map(Stop::path));
    }

    /** What is refused here is refused by the ledger itself, such as by a clock that is behind. */
    private Response answer(Outcome<String> path) {
        return path.fold(
                Redirect::to,
                reasons -> Filled.fresh()
                        .against(reasons)
                        .again(again -> SafetyPages.safety(look.view(signedIn.now(), again.reasons()))));
    }
}

package wainbook.safety.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.safety.miss.NearMiss;
import wainbook.safety.miss.Reporting;
import wainbook.safety.page.view.MissLine;
import wainbook.safety.page.view.StopLine;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.Stopping;
import wainbook.safety.visit.Visit;
import wainbook.safety.visit.Visiting;

/** Near misses, stops and visits for scripts. */
@Path("/api/v1/safety")
@Authenticated
public class SafetyApi {

    /** A near miss as it stands; who reported it is not among it. */
    public record Miss(
            int nearMiss,
            Instant at,
            Optional<String> order,
            Optional<String> station,
            Optional<String> words,
            NearMiss.State state,
            Optional<String> owner,
            Optional<LocalDate> dueOn,
            Optional<String> changed) {

        static Miss of(NearMiss miss) {
            return new Miss(
                    miss.number(),
                    miss.reported().moment().at(),
                    miss.said().order(),
                    miss.said().station(),
                    miss.said().words(),
                    miss.state(),
                    miss.owner(),
                    miss.dueOn(),
                    miss.changed());
        }
    }

    /** A stop as it stands. */
    public record Stopped(
            Optional<String> order,
            int stop,
            Instant since,
            Optional<String> station,
            Optional<String> words,
            Optional<Integer> hold,
            boolean open) {

        static Stopped of(Stop stop) {
            return new Stopped(
                    stop.order(),
                    stop.number(),
                    stop.stopped().moment().at(),
                    stop.said().station(),
                    stop.said().words(),
                    stop.said().hold(),
                    stop.open());
        }
    }

    /** Somebody inside; by number, since names are for eyes in the works. */
    public record Inside(int visit, String visitor, String area, String host, Instant since, LocalDate inductedTo) {

        static Inside of(Visit visit) {
            return new Inside(
                    visit.number(),
                    visit.visitor(),
                    visit.said().area(),
                    visit.host(),
                    visit.entered().moment().at(),
                    visit.inductedTo());
        }
    }

    /** What is told; without an id a second request is one more. {@code place} is asked of those without a name only: whether where it was is kept. */
    public record Telling(
            Optional<UUID> id,
            Optional<String> order,
            Optional<String> station,
            Optional<String> words,
            Optional<Boolean> nameless,
            Optional<Boolean> place) {

        Touch touch() {
            return new Touch(
                    id.orElseGet(UUID::randomUUID), order, station, words, nameless.orElse(false), place.orElse(false));
        }
    }

    /** A visitor who comes in with whoever asks as their host. */
    public record Entering(UUID id, String visitor, String area, Optional<String> permit) {}

    /** A visitor who is out. */
    public record Leaving(UUID id) {}

    private final SafetyLook look;
    private final VisitLook visits;
    private final Reporting reporting;
    private final Stopping stopping;
    private final Visiting visiting;
    private final SignedIn signedIn;

    SafetyApi(
            SafetyLook look,
            VisitLook visits,
            Reporting reporting,
            Stopping stopping,
            Visiting visiting,
            SignedIn signedIn) {
        this.look = look;
        this.visits = visits;
        this.reporting = reporting;
        this.stopping = stopping;
        this.visiting = visiting;
        this.signedIn = signedIn;
    }

    @GET
    @Path("near-misses")
    public List<Miss> misses() {
        return look.misses(signedIn.now()).stream()
                .map(MissLine::miss)
                .map(Miss::of)
                .toList();
    }

    @POST
    @Path("near-misses")
    public Response report(Telling body) {
        Touch touch = body.touch();
        return Receipt.of(reporting.report(touch.report(), touch.by(signedIn.actor())));
    }

    @GET
    @Path("stops")
    public List<Stopped> stops() {
        return look.stops().stream().map(StopLine::stop).map(Stopped::of).toList();
    }

    @POST
    @Path("stops")
    public Response stop(Telling body) {
        Touch touch = body.touch();
        return Receipt.of(stopping.stop(touch.stop(), touch.by(signedIn.actor())));
    }

    @GET
    @Path("visits")
    public List<Inside> inside() {
        return visits.visits().inside().stream().map(Inside::of).toList();
    }

    @POST
    @Path("visits")
    public Response enter(Entering body) {
        return Receipt.of(
                visiting.enter(new Visiting.ToEnter(body.id, body.visitor, body.area, body.permit), signedIn.actor()));
    }

    @POST
    @Path("visits/{visit}/out")
    public Response leave(int visit, Leaving body) {
        return Receipt.of(visiting.leave(new Visiting.ToLeave(body.id, visit), signedIn.actor()));
    }
}

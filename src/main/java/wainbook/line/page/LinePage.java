package wainbook.line.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.smallrye.mutiny.Multi;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Clock;
import wainbook.page.SignedIn;
import wainbook.page.live.Live;

/** The line: every station from the end to the start, and what stands beside it. */
@Path("/line")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class LinePage {

    private final LineLook look;
    private final Live live;
    private final Clock clock;
    private final SignedIn signedIn;

    LinePage(LineLook look, Live live, Clock clock, SignedIn signedIn) {
        this.look = look;
        this.live = live;
        this.clock = clock;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance line() {
        return LinePages.line(look.at(signedIn.now().at()));
    }

    /** The same part, told anew whenever it changes. */
    @GET
    @Path("events")
    @Produces(MediaType.SERVER_SENT_EVENTS)
    public Multi<OutboundSseEvent> events(@Context RoutingContext web, @Context Sse sse) {
        return live.part(
                "line", () -> LinePages.stations(look.at(clock.instant())).render(), web, sse);
    }

    @GET
    @Path("stations")
    public TemplateInstance stations() {
        return LinePages.stations(look.at(signedIn.now().at()));
    }
}

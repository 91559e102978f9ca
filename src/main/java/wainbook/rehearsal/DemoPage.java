package wainbook.rehearsal;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import io.smallrye.mutiny.Multi;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.SignedIn;
import wainbook.page.api.Redirect;
import wainbook.page.live.Live;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Where a shift of the demonstration is played. */
@Path("/demo")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class DemoPage {

    @CheckedTemplate(basePath = "rehearsal", defaultName = CheckedTemplate.ELEMENT_NAME)
    static final class Pages {
        private Pages() {}

        static native TemplateInstance demo(DemoView view);

        /** The part that is told anew. */
        static native TemplateInstance play(DemoView view);
    }

    private final ShiftPlay play;
    private final WorksDay day;
    private final Live live;
    private final SignedIn signedIn;

    DemoPage(ShiftPlay play, WorksDay day, Live live, SignedIn signedIn) {
        this.play = play;
        this.day = day;
        this.live = live;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance demo() {
        return draw(Filled.fresh().with("speed", Speed.FIVE_MINUTES.name()));
    }

    @GET
    @Path("play")
    public TemplateInstance play() {
        return Pages.play(view(Filled.fresh(), false));
    }

    @GET
    @Path("events")
    @Produces(MediaType.SERVER_SENT_EVENTS)
    public Multi<OutboundSseEvent> events(@Context RoutingContext web, @Context Sse sse) {
        if (!play.possible()) {
            throw new NotFoundException();
        }
        return live.part("demo", () -> Pages.play(view(Filled.fresh(), false)).render(), web, sse);
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response begin(@RestForm String id, @RestForm String speed) {
        Filled filled = Filled.sent(id).with("speed", speed);
        filled = DemoView.speed(speed).isEmpty() ? filled.wrong("speed", "rehearsal.speedMissing") : filled;
        return filled.right()
                ? filled.answer(play.begin(filled.id(), DemoView.speed(speed).orElseThrow()), "/demo", this::draw)
                : filled.again(this::draw);
    }

    @POST
    @Path("stop")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response stop() {
        play.stop();
        return Redirect.to("/demo");
    }

    private TemplateInstance draw(Filled filled) {
        return Pages.demo(view(filled, signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager)));
    }

    private DemoView view(Filled filled, boolean may) {
        if (!play.possible()) {
            throw new NotFoundException();
        }
        return new DemoView(filled, may, play.against(), play.shift(), play.last(), new Formats(day.zone()));
    }
}

package wainbook.safety.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.safety.Nameless;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.Stopping;

/** One safety stop: words that come later, and of a place its lifting. A vehicle's is lifted with its hold. */
@Path("/safety/stops/{vehicle: [A-Za-z0-9_][A-Za-z0-9._-]{0,39}}/{number: [1-9][0-9]{0,5}}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class StopPage {

    private final SafetyLook look;
    private final Stopping stopping;
    private final SignedIn signedIn;

    StopPage(SafetyLook look, Stopping stopping, SignedIn signedIn) {
        this.look = look;
        this.stopping = stopping;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance stop(String vehicle, int number) {
        return draw(vehicle, number, Filled.fresh());
    }

    private TemplateInstance draw(String vehicle, int number, Filled filled) {
        return SafetyPages.stop(look.view(vehicle, number, filled, signedIn.now()));
    }

    @POST
    @Path("words")
    public Response tell(
            String vehicle,
            int number,
            @RestForm String id,
            @RestForm String words,
            @RestForm Optional<String> nameless) {
        Stop stop = look.known(vehicle, number);
        Filled filled = Filled.sent(id).with("words", words).with("nameless", nameless.orElse(""));
        return filled.answer(
                stopping.tell(
                        new Stopping.ToTell(filled.id(), stop.stopped().subject(), number, filled.value("words")),
                        Nameless.of(signedIn.actor(), nameless.isPresent())),
                stop.path(),
                again -> draw(vehicle, number, again));
    }

    @POST
    @Path("lifting")
    public Response lift(String vehicle, int number, @RestForm String id, @RestForm String done) {
        Stop stop = look.known(vehicle, number);
        if (stop.order().isPresent()) {
            throw new NotFoundException();
        }
        Filled filled = Filled.sent(id).with("done", done);
        return filled.answer(
                stopping.lift(new Stopping.ToLift(filled.id(), number, filled.value("done")), signedIn.actor()),
                stop.path(),
                again -> draw(vehicle, number, again));
    }
}

package wainbook.safety.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.safety.Nameless;
import wainbook.safety.miss.Handling;
import wainbook.safety.miss.Reporting;

/** One near miss: words that come later, who sees to it, and what was changed. */
@Path("/safety/near-misses/{number: [1-9][0-9]{0,5}}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class MissPage {

    private final SafetyLook look;
    private final Reporting reporting;
    private final Handling handling;
    private final SignedIn signedIn;

    MissPage(SafetyLook look, Reporting reporting, Handling handling, SignedIn signedIn) {
        this.look = look;
        this.reporting = reporting;
        this.handling = handling;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance miss(int number) {
        return draw(number, Filled.fresh());
    }

    private TemplateInstance draw(int number, Filled filled) {
        return SafetyPages.miss(look.view(number, filled, signedIn.now()));
    }

    @POST
    @Path("words")
    public Response tell(int number, @RestForm String id, @RestForm String words, @RestForm Optional<String> nameless) {
        look.miss(number);
        Filled filled = Filled.sent(id).with("words", words).with("nameless", nameless.orElse(""));
        return filled.answer(
                reporting.tell(
                        new Reporting.ToTell(filled.id(), number, filled.value("words")),
                        Nameless.of(signedIn.actor(), nameless.isPresent())),
                path(number),
                again -> draw(number, again));
    }

    @POST
    @Path("look")
    public Response lookAt(int number, @RestForm String id, @RestForm String owner, @RestForm String due) {
        look.miss(number);
        Filled filled = Filled.sent(id).with("owner", owner).with("due", due);
        Optional<LocalDate> day = day(filled.value("due"));
        return day.isEmpty()
                ? filled.wrong("due", "safety.dueFault").again(again -> draw(number, again))
                : filled.answer(
                        handling.lookAt(
                                new Handling.ToLookAt(filled.id(), number, filled.value("owner"), day.get()),
                                signedIn.actor()),
                        path(number),
                        again -> draw(number, again));
    }

    @POST
    @Path("closing")
    public Response close(int number, @RestForm String id, @RestForm String changed) {
        look.miss(number);
        Filled filled = Filled.sent(id).with("changed", changed);
        return filled.answer(
                handling.close(new Handling.ToClose(filled.id(), number, filled.value("changed")), signedIn.actor()),
                path(number),
                again -> draw(number, again));
    }

    static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException unreadable) {
            return Optional.empty();
        }
    }

    private static String path(int number) {
        return "/safety/near-misses/" + number;
    }
}

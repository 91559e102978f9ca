package wainbook.permit.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.permit.Permit;
import wainbook.permit.Permitting;
import wainbook.permit.Step;

/** All permits, and one with the steps that can be taken with it. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class PermitsPage {

    static final String ONE = "{vehicle: [A-Za-z0-9_][A-Za-z0-9._-]{0,39}}/{number: [1-9][0-9]{0,5}}";

    private final PermitLook look;
    private final Permitting permitting;
    private final SignedIn signedIn;

    PermitsPage(PermitLook look, Permitting permitting, SignedIn signedIn) {
        this.look = look;
        this.permitting = permitting;
        this.signedIn = signedIn;
    }

    @GET
    @Path("permits")
    public TemplateInstance all() {
        return PermitPages.permits(look.list(signedIn.now()));
    }

    @GET
    @Path("permits.csv")
    @Produces("text/csv")
    public Response csv() {
        ListView list = look.list(signedIn.now());
        return Csv.file(
                "permits",
                Arrays.asList(Words.of("permit.csvHeader").split(";")),
                Stream.concat(list.open().stream(), list.over().stream())
                        .map(PermitLine::cells)
                        .toList());
    }

    @GET
    @Path("permits/" + ONE)
    public TemplateInstance one(String vehicle, int number) {
        return draw(vehicle, number, Filled.fresh());
    }

    private TemplateInstance draw(String vehicle, int number, Filled filled) {
        return PermitPages.permit(look.view(vehicle, number, filled, signedIn.now()));
    }

    @POST
    @Path("permits/" + ONE + "/{step}")
    public Response take(String vehicle, int number, String step, @RestForm String id, @RestForm String words) {
        Permit permit = look.known(vehicle, number);
        Step wanted = Step.of(step).orElseThrow(NotFoundException::new);
        Filled filled = Filled.sent(id).with("words", words);
        Optional<String> said = Optional.of(filled.value("words")).filter(text -> !text.isEmpty());
        return filled.answer(
                permitting.take(
                        new Permitting.ToTake(filled.id(), permit.subject(), number, wanted, said), signedIn.actor()),
                "/permits/" + vehicle + "/" + number,
                again -> draw(vehicle, number, again));
    }
}

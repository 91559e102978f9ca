package wainbook.isolation.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.isolation.Step;
import wainbook.isolation.page.StepForms.SentBack;
import wainbook.isolation.step.TakeStep;
import wainbook.isolation.step.ToTake;
import wainbook.isolation.step.Wanted;
import wainbook.order.Numbers;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Redirect;
import wainbook.works.shift.WorksDay;

/** The page of a vehicle's isolation. Open to everybody: who may take which step is the step's own rules. */
@Path("/isolation")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class IsolationPage {

    private static final String ONE = "{order: " + Numbers.FORM + "}";

    private final IsolationLook look;
    private final TakeStep takeStep;
    private final WorksDay day;
    private final SignedIn signedIn;
    private final ObjectMapper json;

    IsolationPage(IsolationLook look, TakeStep takeStep, WorksDay day, SignedIn signedIn, ObjectMapper json) {
        this.look = look;
        this.takeStep = takeStep;
        this.day = day;
        this.signedIn = signedIn;
        this.json = json;
    }

    @GET
    public TemplateInstance vehicles() {
        return IsolationPages.vehicles(look.vehicles(signedIn.now()));
    }

    @GET
    @Path(ONE)
    public TemplateInstance isolation(String order, @RestQuery Optional<Long> done) {
        return IsolationPages.isolation(look.at(order, signedIn.now(), Optional.empty(), done));
    }

    @POST
    @Path(ONE + "/{step}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response take(String order, String step, MultivaluedMap<String, String> sent) {
        Step wanted = Wanted.step(step).orElseThrow(NotFoundException::new);
        UUID id = Filled.sent(sent.getFirst("id")).id();
        SentForm.Read read = SentForm.of(wanted, sent, signedIn.now().at().atZone(day.zone()), json);
        if (read.wanted().isEmpty()) {
            return again(order, new SentBack(wanted, read.form(), id, List.of()), 422);
        }
        var asked = new ToTake(
                id,
                order,
                read.wanted().get(),
                Optional.ofNullable(sent.getFirst("password")),
                number(sent.getFirst("seen")));
        return takeStep.take(asked, signedIn.actor())
                .fold(
                        entry -> Redirect.to("/isolation/" + order + "?done=" + entry.number()),
                        reasons -> refused(order, new SentBack(wanted, read.form(), id, reasons)));
    }

    private Response refused(String order, SentBack back) {
        Form form = back.form();
        for (Reason reason : back.refusals()) {
            if (reason.lift().filter("#password"::equals).isPresent()) {
                form = form.wrong("password", reason.key());
            }
        }
        return again(
                order, new SentBack(back.step(), form, back.id(), back.refusals()), Problem.status(back.refusals()));
    }

    private Response again(String order, SentBack back, int status) {
        return Response.status(status)
                .entity(IsolationPages.isolation(look.at(order, signedIn.now(), Optional.of(back), Optional.empty())))
                .build();
    }

    private static Optional<Long> number(String text) {
        return Optional.ofNullable(text)
                .filter(typed -> typed.matches("\\d{1,9}"))
                .map(Long::valueOf);
    }
}

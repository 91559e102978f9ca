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
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.safety.page.view.VisitLine;
import wainbook.safety.page.view.VisitorsView;
import wainbook.safety.visit.Visiting;

/** Visitors in a high-voltage area: who is inside comes first; then induction, in, a new host, out. */
@Path("/safety")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class VisitorsPage {

    private static final String PAGE = "/safety/visitors";
    private static final String PERMIT = "[A-Za-z0-9_][A-Za-z0-9._-]{0,39}/[1-9][0-9]{0,5}";

    private final VisitLook look;
    private final Visiting visiting;
    private final SignedIn signedIn;

    VisitorsPage(VisitLook look, Visiting visiting, SignedIn signedIn) {
        this.look = look;
        this.visiting = visiting;
        this.signedIn = signedIn;
    }

    @GET
    @Path("visitors")
    public TemplateInstance visitors(@RestQuery Optional<String> permit) {
        return SafetyPages.visitors(look.view(permit.filter(text -> text.matches(PERMIT)), signedIn.now()));
    }

    @GET
    @Path("visitors.csv")
    @Produces("text/csv")
    public Response csv() {
        VisitorsView view = look.view(Optional.empty(), signedIn.now());
        return Csv.file(
                "visitors",
                Arrays.asList(Words.of("safety.visitHeader").split(";")),
                Stream.concat(view.inside().stream(), view.earlier().stream())
                        .map(VisitLine::cells)
                        .toList());
    }

    @GET
    @Path("visitors/induction")
    public TemplateInstance induction(@RestQuery Optional<String> visitor) {
        return SafetyPages.induction(look.induction(Filled.fresh()
                .with("visitor", visitor.filter(this::known).orElse(""))
                .against(visiting.againstHosting(signedIn.now()))));
    }

    private boolean known(String visitor) {
        return look.visits().visitor(visitor).isPresent();
    }

    @POST
    @Path("visitors/induction")
    public Response induct(
            @RestForm String id,
            @RestForm String visitor,
            @RestForm String name,
            @RestForm String firm,
            @RestForm String validTo) {
        Filled filled = Filled.sent(id)
                .with("visitor", visitor)
                .with("name", name)
                .with("firm", firm)
                .with("validTo", validTo);
        Optional<LocalDate> last = MissPage.day(filled.value("validTo"));
        if (last.isEmpty()) {
            return filled.wrong("validTo", "safety.dueFault")
                    .again(again -> SafetyPages.induction(look.induction(again)));
        }
        return filled.answer(
                visiting.induct(
                        new Visiting.ToInduct(
                                filled.id(),
                                Touch.text(visitor),
                                filled.value("name"),
                                filled.value("firm"),
                                last.get()),
                        signedIn.actor()),
                PAGE + "/in",
                again -> SafetyPages.induction(look.induction(again)));
    }

    @GET
    @Path("visitors/in")
    public TemplateInstance entering(@RestQuery Optional<String> visitor, @RestQuery Optional<String> permit) {
        return SafetyPages.entering(look.entering(Filled.fresh()
                .with("visitor", visitor.orElse(""))
                .with("permit", permit.orElse(""))
                .against(visiting.againstHosting(signedIn.now()))));
    }

    @POST
    @Path("visitors/in")
    public Response enter(
            @RestForm String id, @RestForm String visitor, @RestForm String area, @RestForm String permit) {
        Filled filled =
                Filled.sent(id).with("visitor", visitor).with("area", area).with("permit", permit);
        return filled.answer(
                visiting.enter(
                        new Visiting.ToEnter(
                                filled.id(),
                                filled.value("visitor"),
                                filled.value("area"),
                                Touch.text(permit).filter(text -> text.matches(PERMIT))),
                        signedIn.actor()),
                PAGE,
                again -> SafetyPages.entering(look.entering(again)));
    }

    @POST
    @Path("visitors/{visit: [1-9][0-9]{0,5}}/host")
    public Response takeOver(int visit, @RestForm String id) {
        Filled filled = Filled.sent(id);
        return filled.answer(
                visiting.takeOver(new Visiting.ToTakeOver(existing(visit, filled), visit), signedIn.actor()),
                PAGE,
                again -> SafetyPages.visitors(look.view(Optional.empty(), signedIn.now())));
    }

    @POST
    @Path("visitors/{visit: [1-9][0-9]{0,5}}/out")
    public Response leave(int visit, @RestForm String id) {
        Filled filled = Filled.sent(id);
        return filled.answer(
                visiting.leave(new Visiting.ToLeave(existing(visit, filled), visit), signedIn.actor()),
                PAGE,
                again -> SafetyPages.visitors(look.view(Optional.empty(), signedIn.now())));
    }

    private UUID existing(int visit, Filled filled) {
        return look.visits().number(visit).map(known -> filled.id()).orElseThrow(NotFoundException::new);
    }
}

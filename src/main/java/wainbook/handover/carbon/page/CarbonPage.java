package wainbook.handover.carbon.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSaying.CarbonStated;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonStating;
import wainbook.handover.carbon.EnginesFate;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** What the conversion of one vehicle saves, and the form that states it. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/carbon")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class CarbonPage {

    private final Ledger ledger;
    private final CarbonStating stating;
    private final EnginesFate engine;
    private final SignedIn signedIn;

    CarbonPage(Ledger ledger, CarbonStating stating, EnginesFate engine, SignedIn signedIn) {
        this.ledger = ledger;
        this.stating = stating;
        this.engine = engine;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance carbon(String order) {
        return draw(order, CarbonOffer.of(ledger.history(Numbers.subject(order)), ledger.history(Subject.works())));
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
    public Response state(String order, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var basis = new Basis(
                form.whole("annualKm"),
                form.whole("years"),
                range(form, "litres"),
                range(form, "kwh"),
                range(form, "charging"),
                form.number("packKwh"),
                range(form, "pack"),
                form.number("gridFallPercent"));
        var asked = new CarbonStating.ToState(form.filled().id(), order, basis, form.whole("year"));
        return form.right()
                ? form.filled()
                        .answer(
                                stating.state(asked, signedIn.actor()),
                                "/orders/" + order + "/carbon",
                                again -> draw(order, again))
                : form.filled().again(again -> draw(order, again));
    }

    /** Least and most left empty are what is likely. */
    private static List<BigDecimal> range(SentForm form, String name) {
        BigDecimal mid = form.number(name + "Mid");
        return List.of(
                form.maybeNumber(name + "Low").orElse(mid),
                mid,
                form.maybeNumber(name + "High").orElse(mid));
    }

    private TemplateInstance draw(String order, Filled filled) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return CarbonPages.carbon(new CarbonView(
                known,
                history.saying(CarbonStated.class).reduce((before, later) -> later),
                engine.inWords(history, known),
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.qualityEngineer),
                CarbonSets.loaded(),
                filled));
    }
}

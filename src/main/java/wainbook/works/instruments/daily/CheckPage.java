package wainbook.works.instruments.daily;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.shift.WorksDay;

/** The check of one torque tool before work: three pulls, and what came of the ones before. */
@Path("/instruments/{code: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/checks")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.qualityEngineer})
public class CheckPage {

    private static final String DECIMAL = "\\d{1,6}([.]\\d{1,6})?";

    private final Ledger ledger;
    private final Checking checking;
    private final WorksDay day;
    private final SignedIn signedIn;

    CheckPage(Ledger ledger, Checking checking, WorksDay day, SignedIn signedIn) {
        this.ledger = ledger;
        this.checking = checking;
        this.day = day;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance checks(String code) {
        return draw(code, Filled.fresh());
    }

    @POST
    public Response check(
            String code,
            @RestForm String id,
            @RestForm String tester,
            @RestForm String target,
            @RestForm String references) {
        known(code);
        Filled filled =
                Filled.sent(id).with("tester", tester).with("target", target).with("references", references);
        List<String> pulls = Stream.of(filled.value("references").split("[\\s;]+"))
                .filter(pull -> !pull.isEmpty())
                .toList();
        Filled checked =
                filled.value("target").matches(DECIMAL) ? filled : filled.wrong("target", "works.decimalFault");
        checked = pulls.stream().allMatch(pull -> pull.matches(DECIMAL) && new BigDecimal(pull).signum() > 0)
                ? checked
                : checked.wrong("references", "works.threePulls");
        checked = filled.value("tester").matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")
                ? checked
                : checked.wrong("tester", "works.testerMissing");
        if (!checked.right()) {
            return checked.again(again -> draw(code, again));
        }
        var asked = new Checking.ToCheck(
                filled.id(),
                code,
                filled.value("tester"),
                new BigDecimal(filled.value("target")),
                pulls.stream().map(BigDecimal::new).toList());
        return filled.answer(
                checking.check(asked, signedIn.actor()),
                "/instruments/" + code + "/checks",
                again -> draw(code, again));
    }

    private TemplateInstance draw(String code, Filled filled) {
        History history = known(code);
        return CheckPages.checks(new CheckView(
                Instrument.of(history).orElseThrow(),
                CheckView.lines(history),
                InstrumentRow.ofKind(Checking.TESTER),
                day.of(signedIn.now().at()),
                filled));
    }

    private History known(String code) {
        History history = ledger.history(Subject.instrument(code));
        if (Instrument.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}

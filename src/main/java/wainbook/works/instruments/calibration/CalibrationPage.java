package wainbook.works.instruments.calibration;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;
import wainbook.works.instruments.Instrument;

/** The form for one calibration of one instrument. */
@Path("/instruments/{code: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/calibrations")
@Produces(MediaType.TEXT_HTML)
@RolesAllowed({Role.worksEngineer, Role.qualityEngineer})
public class CalibrationPage {

    private final Ledger ledger;
    private final Calibrating calibrating;
    private final SignedIn signedIn;

    CalibrationPage(Ledger ledger, Calibrating calibrating, SignedIn signedIn) {
        this.ledger = ledger;
        this.calibrating = calibrating;
        this.signedIn = signedIn;
    }

    @GET
    @Path("new")
    public TemplateInstance form(String code) {
        return draw(code, Filled.fresh());
    }

    @POST
    public Response calibrate(String code, MultivaluedMap<String, String> sent) {
        History history = known(code);
        CalibrationForm form = CalibrationForm.sent(sent);
        Calibrating.ToCalibrate asked = form.asked(code, seen(sent, history));
        if (!form.filled().right()) {
            return form.filled().again(again -> draw(code, again));
        }
        return form.filled()
                .answer(
                        calibrating.calibrate(asked, signedIn.actor()),
                        "/instruments/" + code,
                        again -> draw(code, again));
    }

    private static long seen(MultivaluedMap<String, String> sent, History history) {
        String seen = String.valueOf(sent.getFirst("seen"));
        return seen.matches("\\d{1,18}") ? Long.parseLong(seen) : history.number();
    }

    private TemplateInstance draw(String code, Filled filled) {
        History history = known(code);
        return CalibrationPages.calibration(
                new CalibrationView(Instrument.of(history).orElseThrow(), history.number(), filled));
    }

    private History known(String code) {
        History history = ledger.history(Subject.instrument(code));
        if (Instrument.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }
}

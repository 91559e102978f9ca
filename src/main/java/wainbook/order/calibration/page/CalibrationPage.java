package wainbook.order.calibration.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.Asking;
import wainbook.order.calibration.CalibrationLook;
import wainbook.order.calibration.Times;
import wainbook.order.calibration.Wanted;
import wainbook.order.promise.Promise;
import wainbook.order.specification.SpecificationLook;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** How the vehicle of an order shall drive, and whether it has the calibration for it. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/calibration")
@Produces(MediaType.TEXT_HTML)
public class CalibrationPage {

    private final Ledger ledger;
    private final CalibrationLook look;
    private final SpecificationLook specifications;
    private final Asking asking;
    private final SignedIn signedIn;

    CalibrationPage(
            Ledger ledger, CalibrationLook look, SpecificationLook specifications, Asking asking, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.specifications = specifications;
        this.asking = asking;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance calibration(String order) {
        return CalibrationPages.calibration(view(order, Optional.empty()));
    }

    @GET
    @Path("file.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(String order) {
        return Csv.file(
                "calibration-" + order,
                Arrays.asList(Words.of("order.calibrationCsv").split(";")),
                view(order, Optional.empty()).cells());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response ask(String order, MultivaluedMap<String, String> sent) {
        Numbers.subject(order);
        Filled filled = Filled.sent(sent.getFirst("id"));
        for (String field : sent.keySet()) {
            filled = field.equals("id") ? filled : filled.with(field, sent.getFirst(field));
        }
        WishForm.Read read = WishForm.read(filled);
        if (!read.filled().right()) {
            return read.filled().again(again -> draw(order, again));
        }
        String judged = read.filled().value("judged");
        var asked = new Asking.ToAsk(
                read.filled().id(),
                order,
                read.wishes(),
                read.sameTime(),
                judged.matches("[0-9]{1,9}") ? Long.parseLong(judged) : 0);
        return read.filled()
                .answer(
                        asking.ask(asked, signedIn.actor()),
                        "/orders/" + order + "/calibration",
                        again -> draw(order, again));
    }

    private TemplateInstance draw(String order, Filled again) {
        return CalibrationPages.calibration(view(order, Optional.of(again)));
    }

    private CalibrationView view(String number, Optional<Filled> sent) {
        History history = ledger.history(Numbers.subject(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        Wanted wanted = Wanted.of(history);
        List<Promise> promises =
                Promise.of(history).stream().filter(Promise::stands).toList();
        return new CalibrationView(
                order,
                wanted,
                look.compared(history),
                Times.of(wanted, specifications.worked(history, signedIn.now().at())),
                promises,
                sent.orElseGet(() -> WishForm.filled(Filled.fresh(), wanted.wishes(), wanted.sameTime())),
                sent.isPresent(),
                signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager),
                Ordering.closed(Optional.of(order)));
    }
}

package wainbook.line.awaited.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.awaited.Awaiting;
import wainbook.line.awaited.Coming;
import wainbook.line.awaited.StagesAhead;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** The parts that are missing for a vehicle. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/awaited")
@Produces(MediaType.TEXT_HTML)
@Authenticated
public class AwaitedPage {

    private final Ledger ledger;
    private final StagesAhead stages;
    private final Awaiting awaiting;
    private final Coming coming;
    private final WorksDay day;
    private final SignedIn signedIn;

    AwaitedPage(Ledger ledger, StagesAhead stages, Awaiting awaiting, Coming coming, WorksDay day, SignedIn signedIn) {
        this.ledger = ledger;
        this.stages = stages;
        this.awaiting = awaiting;
        this.coming = coming;
        this.day = day;
        this.signedIn = signedIn;
    }

    /** @param open the part whose forms are open */
    @GET
    public TemplateInstance all(String order, @RestQuery Optional<Integer> open) {
        return draw(order, open, Filled.fresh());
    }

    @POST
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response await(
            String order,
            @RestForm String id,
            @RestForm String stage,
            @RestForm String what,
            @RestForm String part,
            @RestForm String expectedOn) {
        Filled filled = Filled.sent(id)
                .with("stage", stage)
                .with("what", what)
                .with("part", part)
                .with("expectedOn", expectedOn);
        Optional<LocalDate> date = date(filled.value("expectedOn"));
        if (date.isEmpty()) {
            return filled.wrong("expectedOn", "line.awaitedNoDay").again(again -> draw(order, Optional.empty(), again));
        }
        var asked = new Awaiting.ToAwait(
                filled.id(),
                order,
                filled.value("stage"),
                filled.value("what"),
                Optional.of(filled.value("part")).filter(code -> !code.isEmpty()),
                date.get());
        return filled.answer(
                awaiting.await(asked, signedIn.actor()),
                AwaitedPart.path(order),
                again -> draw(order, Optional.empty(), again));
    }

    @POST
    @Path("{number: [0-9]{1,6}}/expected")
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response expect(String order, int number, @RestForm String id, @RestForm String expectedOn) {
        Filled filled = Filled.sent(id).with("expectedOn", expectedOn);
        Optional<LocalDate> date = date(filled.value("expectedOn"));
        if (date.isEmpty()) {
            return filled.wrong("expectedOn", "line.awaitedNoDay")
                    .again(again -> draw(order, Optional.of(number), again));
        }
        return filled.answer(
                awaiting.expect(new Awaiting.ToExpect(filled.id(), order, number, date.get()), signedIn.actor()),
                AwaitedPart.path(order),
                again -> draw(order, Optional.of(number), again));
    }

    @POST
    @Path("{number: [0-9]{1,6}}/came")
    @RolesAllowed({Role.lineManager, Role.teamLeader, Role.worksEngineer})
    public Response note(String order, int number, @RestForm String id, @RestForm String remark) {
        Filled filled = Filled.sent(id).with("remark", remark);
        return filled.answer(
                coming.note(new Coming.ToNote(filled.id(), order, number, filled.value("remark")), signedIn.actor()),
                AwaitedPart.path(order),
                again -> draw(order, Optional.of(number), again));
    }

    private TemplateInstance draw(String number, Optional<Integer> chosen, Filled filled) {
        History history = ledger.history(Numbers.subject(number));
        WorkOrder order = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        boolean changes =
                signedIn.is(Role.lineManager) || signedIn.is(Role.teamLeader) || signedIn.is(Role.worksEngineer);
        return AwaitedPages.awaited(new AwaitedView(
                order,
                AwaitedParts.of(history),
                stages.of(history, order),
                day.of(signedIn.now().at()),
                chosen,
                filled,
                changes));
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException unreadable) {
            return Optional.empty();
        }
    }
}

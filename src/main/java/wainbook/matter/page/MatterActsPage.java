package wainbook.matter.page;

import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.nonconformity.Disposal;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.matter.nonconformity.Reporting;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** The forms by which something wrong is reported and decided. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class MatterActsPage {

    private static final String ANY_REASON = "–";

    private final Ledger ledger;
    private final Reporting reporting;
    private final Disposal disposal;
    private final SignedIn signedIn;

    MatterActsPage(Ledger ledger, Reporting reporting, Disposal disposal, SignedIn signedIn) {
        this.ledger = ledger;
        this.reporting = reporting;
        this.disposal = disposal;
        this.signedIn = signedIn;
    }

    @GET
    @Path("report")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.worksEngineer, Role.qualityEngineer})
    public TemplateInstance report(String order, @RestQuery Optional<String> item) {
        known(order);
        return MatterPages.report(Filled.fresh().with("item", item.orElse("")), order);
    }

    @POST
    @Path("report")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.worksEngineer, Role.qualityEngineer})
    public Response report(String order, @RestForm String id, @RestForm String item, @RestForm String what) {
        known(order);
        Filled filled = Filled.sent(id).with("item", item).with("what", what);
        Optional<String> about = Optional.of(filled.value("item")).filter(key -> !key.isEmpty());
        var asked = new Reporting.ToReport(filled.id(), order, about, filled.value("what"));
        return filled.answer(
                reporting.report(asked, signedIn.actor()),
                "/orders/" + order + "#matters",
                again -> MatterPages.report(again, order));
    }

    @GET
    @Path("nonconformities/{number}/disposition")
    @RolesAllowed(Role.qualityEngineer)
    public TemplateInstance decide(String order, int number) {
        History history = known(order);
        Nonconformity open = nonconformity(history, number);
        return MatterPages.disposition(Filled.fresh().against(against(history, number)), order, open, history.number());
    }

    @POST
    @Path("nonconformities/{number}/disposition")
    @RolesAllowed(Role.qualityEngineer)
    public Response decide(
            String order,
            int number,
            @RestForm String id,
            @RestForm Optional<Long> seen,
            @RestForm String disposition,
            @RestForm String because) {
        History history = known(order);
        Nonconformity open = nonconformity(history, number);
        Filled filled = Filled.sent(id).with("disposition", disposition).with("because", because);
        Optional<Disposition> chosen = Arrays.stream(Disposition.values())
                .filter(one -> one.name().equals(filled.value("disposition")))
                .findFirst();
        Filled checked = chosen.isEmpty() ? filled.wrong("disposition", "matter.dispositionMissing") : filled;
        checked = filled.value("because").isEmpty() ? checked.wrong("because", "matter.reasonMissing") : checked;
        if (!checked.right()) {
            return checked.again(again -> MatterPages.disposition(again, order, open, history.number()));
        }
        var asked =
                new Disposal.Dispose(filled.id(), order, number, chosen.orElseThrow(), filled.value("because"), seen);
        return filled.answer(
                disposal.decide(asked, signedIn.actor()),
                "/orders/" + order + "#matters",
                again ->
                        MatterPages.disposition(again, order, open, known(order).number()));
    }

    /** What stands against any disposition by this person; rework is always among those that can be chosen. */
    private List<Reason> against(History history, int number) {
        var asked = new Disposal.Dispose(
                new UUID(0, 0), history.subject().code(), number, Disposition.REWORK, ANY_REASON, Optional.empty());
        return Disposal.against(asked, history, signedIn.actor().who());
    }

    private History known(String order) {
        History history = ledger.history(Numbers.subject(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        return history;
    }

    private static Nonconformity nonconformity(History history, int number) {
        return Nonconformities.of(history).number(number).orElseThrow(NotFoundException::new);
    }
}

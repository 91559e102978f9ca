package wainbook.handover.page;

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
import java.util.Arrays;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.handover.HandoverLook;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.promise.Promising;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** What the operator of one order was promised, each with its evidence or 'not yet'. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/promises")
@Produces(MediaType.TEXT_HTML)
public class PromisesPage {

    private final Ledger ledger;
    private final HandoverLook look;
    private final Promising promising;
    private final SignedIn signedIn;

    PromisesPage(Ledger ledger, HandoverLook look, Promising promising, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.promising = promising;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public TemplateInstance promises(String order) {
        return draw(Filled.fresh(), order);
    }

    @POST
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response promise(
            String order,
            @RestForm String id,
            @RestForm String option,
            @RestForm String items,
            @RestForm String documents,
            @RestForm String beforeHandover) {
        Numbers.subject(order);
        Filled filled = Filled.sent(id)
                .with("option", option)
                .with("items", items)
                .with("documents", documents)
                .with("beforeHandover", beforeHandover);
        var asked = new Promising.ToPromise(
                filled.id(),
                order,
                filled.value("option"),
                words(filled.value("items")),
                words(filled.value("documents")),
                filled.value("beforeHandover").equals("true"));
        return filled.answer(promising.promise(asked, signedIn.actor()), path(order), again -> draw(again, order));
    }

    @POST
    @Path("{promise}/withdrawal")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response withdraw(String order, int promise, @RestForm String id, @RestForm String reason) {
        Numbers.subject(order);
        Filled filled = Filled.sent(id).with("reason", reason);
        var asked = new Promising.ToWithdraw(filled.id(), order, promise, filled.value("reason"));
        return filled.answer(promising.withdraw(asked, signedIn.actor()), path(order), again -> draw(again, order));
    }

    private TemplateInstance draw(Filled filled, String order) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        return HandoverPages.promises(
                filled,
                new PromisesView(
                        order,
                        look.rules(history, known, signedIn.now()).promises(),
                        known.phase() != WorkOrder.Phase.HANDED_OVER
                                && (signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager))));
    }

    private static String path(String order) {
        return "/orders/" + order + "/promises";
    }

    /** Words parted by commas, semicolons or spaces. */
    private static List<String> words(String text) {
        return Arrays.stream(text.split("[,;\\s]+"))
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
    }
}

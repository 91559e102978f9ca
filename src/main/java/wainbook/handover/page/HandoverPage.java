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
import java.util.Optional;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.handover.FromWaste;
import wainbook.handover.HandingOver;
import wainbook.handover.HandoverLook;
import wainbook.handover.Leaving;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** One vehicle's documents, and its handing over. */
@Path("/handover/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
@Produces(MediaType.TEXT_HTML)
public class HandoverPage {

    private final Ledger ledger;
    private final HandoverLook look;
    private final HandingOver handingOver;
    private final FromWaste waste;
    private final Leaving leaving;
    private final SignedIn signedIn;

    HandoverPage(
            Ledger ledger,
            HandoverLook look,
            HandingOver handingOver,
            FromWaste waste,
            Leaving leaving,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.handingOver = handingOver;
        this.waste = waste;
        this.leaving = leaving;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Response handover(String order, @RestQuery Optional<String> noted, @RestQuery Optional<String> set) {
        HandoverView own = view(order, noted);
        return answer(own, set, asked -> page(HandoverPages.anotherMarket(asked)))
                .orElseGet(() -> page(HandoverPages.handover(Filled.fresh(), own)));
    }

    @GET
    @Path("documents.csv")
    @Produces("text/csv")
    @Authenticated
    public Response documents(String order, @RestQuery Optional<String> set) {
        HandoverView own = view(order, Optional.empty());
        return answer(own, set, asked -> DocumentsTable.of(asked).file())
                .orElseGet(() -> DocumentsTable.of(own).file());
    }

    @POST
    @RolesAllowed(Role.handoverClerk)
    public Response handOver(
            String order, @RestForm String id, @RestForm Optional<Long> seen, @RestForm String receivedBy) {
        Filled filled = Filled.sent(id).with("receivedBy", receivedBy);
        var asked = new HandingOver.ToHandOver(filled.id(), order, filled.value("receivedBy"), seen);
        return filled.answer(
                handingOver.handOver(asked, signedIn.actor()),
                "/handover/" + order,
                again -> draw(again, order, Optional.empty()));
    }

    /** By another set, where one was chosen; a set that is not here comes back as a fault at its field. */
    private Optional<Response> answer(HandoverView own, Optional<String> set, Function<AnotherMarket, Response> shown) {
        return set.map(String::strip)
                .filter(name -> !name.isEmpty() && !name.equals(own.market()))
                .map(name -> look.under(
                                name,
                                own.rules().history(),
                                own.order(),
                                signedIn.now().at())
                        .map(supposed -> shown.apply(new AnotherMarket(own, supposed)))
                        .orElseGet(() -> Filled.fresh()
                                .refused(List.of(HandoverLook.unknown(name)))
                                .again(again -> HandoverPages.handover(again, own))));
    }

    private static Response page(TemplateInstance page) {
        return Response.ok(page).build();
    }

    private TemplateInstance draw(Filled filled, String order, Optional<String> noted) {
        return HandoverPages.handover(filled, view(order, noted));
    }

    private HandoverView view(String order, Optional<String> noted) {
        History history = ledger.history(Numbers.subject(order));
        WorkOrder known = WorkOrder.of(history).orElseThrow(NotFoundException::new);
        var rules = look.rules(history, known, signedIn.now());
        return new HandoverView(
                rules,
                look.today(signedIn.now().at()),
                doors(),
                noted,
                waste.sentences(history),
                Optional.ofNullable(leaving.all(signedIn.now().at()).get(order)));
    }

    private HandoverView.Doors doors() {
        return new HandoverView.Doors(
                is(Role.handoverClerk, Role.lineManager, Role.qualityEngineer),
                is(Role.worksEngineer, Role.lineManager, Role.handoverClerk),
                is(Role.handoverClerk));
    }

    private boolean is(String... roles) {
        return Arrays.stream(roles).anyMatch(signedIn::is);
    }
}

package wainbook.handover.page;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.handover.HandoverLook;
import wainbook.handover.Leaving;
import wainbook.handover.document.DocumentSet;
import wainbook.handover.page.HandoverList.Row;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Csv;
import wainbook.page.Leaf;
import wainbook.page.SignedIn;
import wainbook.page.Words;

/** All vehicles whose documents are anybody's business. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class HandoverListPage {

    private final Ledger ledger;
    private final HandoverLook look;
    private final Leaving leaving;
    private final SignedIn signedIn;

    HandoverListPage(Ledger ledger, HandoverLook look, Leaving leaving, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.leaving = leaving;
        this.signedIn = signedIn;
    }

    @GET
    @Path("handover")
    public TemplateInstance vehicles(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> phase,
            @RestQuery Optional<String> promised,
            @RestQuery Optional<Integer> page) {
        String text = search.map(String::strip).orElse("");
        Optional<Phase> only = phase.flatMap(HandoverListPage::phase);
        int number = Math.max(1, page.orElse(1));
        Promised by = Promised.of(promised.orElse(""));
        var found = found(text, only, by);
        return HandoverPages.vehicles(new HandoverList(
                text,
                only,
                by,
                rows(found.page(number - 1, HandoverList.LEAF_ROWS).list()),
                new Leaf(
                        number,
                        HandoverList.LEAF_ROWS,
                        found.count(),
                        "/handover" + HandoverList.query(text, only, by))));
    }

    @GET
    @Path("handover.csv")
    @Produces("text/csv")
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> phase,
            @RestQuery Optional<String> promised) {
        var found = found(
                search.map(String::strip).orElse(""),
                phase.flatMap(HandoverListPage::phase),
                Promised.of(promised.orElse("")));
        List<List<String>> lines = rows(found.list()).stream().map(Row::cells).toList();
        return Csv.file("handover", Arrays.asList(Words.of("handover.csvHeader").split(";")), lines);
    }

    private PanacheQuery<WorkOrderRow> found(String text, Optional<Phase> only, Promised by) {
        return WorkOrderRow.search(
                text,
                HandoverList.shown(only),
                by.lastDay(look.today(signedIn.now().at())));
    }

    private List<Row> rows(List<WorkOrderRow> orders) {
        Instant now = signedIn.now().at();
        Map<String, Leaving.Days> days = leaving.all(now);
        return orders.stream()
                .map(order -> {
                    History history = ledger.history(Subject.workOrder(order.number));
                    Optional<DocumentSet> set =
                            WorkOrder.of(history).flatMap(known -> look.documents(history, known, now));
                    return Row.of(order, set, look.today(now), Optional.ofNullable(days.get(order.number)));
                })
                .toList();
    }

    private static Optional<Phase> phase(String word) {
        return HandoverList.PHASES.stream()
                .filter(value -> value.name().equals(word))
                .findFirst();
    }
}

package wainbook.order.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Csv;
import wainbook.page.Leaf;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** All work orders. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class OrdersPage {

    private final SignedIn signedIn;

    OrdersPage(SignedIn signedIn) {
        this.signedIn = signedIn;
    }

    @GET
    @Path("orders")
    @Authenticated
    public TemplateInstance orders(
            @RestQuery Optional<String> search, @RestQuery Optional<String> phase, @RestQuery Optional<Integer> page) {
        String text = search.map(String::strip).orElse("");
        Optional<Phase> only = phase.flatMap(OrdersPage::phase);
        int number = Math.max(1, page.orElse(1));
        return OrderPages.orders(new OrderList(
                text,
                only,
                WorkOrderRow.search(text, only)
                        .page(number - 1, OrderList.LEAF_ROWS)
                        .list(),
                new Leaf(
                        number,
                        OrderList.LEAF_ROWS,
                        WorkOrderRow.search(text, only).count(),
                        "/orders" + OrderList.query(text, only)),
                mayMake()));
    }

    @GET
    @Path("orders.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> phase) {
        List<List<String>> rows =
                WorkOrderRow.search(search.map(String::strip).orElse(""), phase.flatMap(OrdersPage::phase)).stream()
                        .map(WorkOrderRow::cells)
                        .toList();
        List<String> header = Arrays.asList(Words.of("order.csvHeader").split(";"));
        return Csv.file("orders", header, rows);
    }

    private boolean mayMake() {
        return signedIn.is(Role.worksEngineer) || signedIn.is(Role.lineManager);
    }

    private static Optional<Phase> phase(String word) {
        return Arrays.stream(Phase.values())
                .filter(value -> value.name().equals(word))
                .findFirst();
    }
}

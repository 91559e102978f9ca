package wainbook.trace;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.Numbers;
import wainbook.order.OrderList;
import wainbook.order.WorkOrderRow;
import wainbook.page.Csv;
import wainbook.page.Words;

/** From a vehicle to everything that its record names, and from there to every other vehicle. */
@Path("/")
@Authenticated
public class VehicleNamesPage {

    private static final String ORDER = "{order: " + Numbers.FORM + "}";

    private final Ledger ledger;

    VehicleNamesPage(Ledger ledger) {
        this.ledger = ledger;
    }

    @GET
    @Path("trace/vehicle/" + ORDER)
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance page(String order) {
        return TracePages.names(names(order));
    }

    @GET
    @Path("trace/vehicle/" + ORDER + "/names.csv")
    @Produces("text/csv")
    public Response csv(String order) {
        return Csv.file(
                "record-of-" + order,
                Arrays.asList(Words.of("trace.namesHeader").split(";")),
                names(order).lines());
    }

    @GET
    @Path("api/v1/trace/vehicles/" + ORDER)
    @Produces(MediaType.APPLICATION_JSON)
    public VehicleNames found(String order) {
        return names(order);
    }

    private VehicleNames names(String order) {
        WorkOrderRow row = WorkOrderRow.<WorkOrderRow>findByIdOptional(order).orElseThrow(NotFoundException::new);
        return new VehicleNames(
                row.number,
                Optional.ofNullable(row.vin),
                Optional.ofNullable(row.registration),
                row.operator,
                OrderList.word(row.phase),
                Trace.Dates.of(row),
                VehicleNames.grouped(Stream.concat(
                                TracedRow.named(order).stream(),
                                VehicleNames.joints(
                                        TracedRow.joints(order), JointRevisions.of(ledger.history(Subject.works())))
                                        .stream())
                        .toList()));
    }
}

package wainbook.order.specification.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.page.Csv;
import wainbook.page.Words;

/** Where the energy of an order’s day goes, with a number of packs. */
@Path("/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/specification/energy")
@Produces(MediaType.TEXT_HTML)
public class EnergyPage {

    private final Drawing drawing;

    EnergyPage(Drawing drawing) {
        this.drawing = drawing;
    }

    @GET
    @Authenticated
    public TemplateInstance energy(String order, @RestQuery String packs, @RestQuery Optional<String> packType) {
        return SpecificationPages.energy(view(order, packs, packType));
    }

    @GET
    @Path("parts.csv")
    @Produces("text/csv")
    @Authenticated
    public Response csv(String order, @RestQuery String packs, @RestQuery Optional<String> packType) {
        return Csv.file(
                "energy-" + order,
                Arrays.asList(Words.of("order.energyCsv").split(";")),
                view(order, packs, packType).cells());
    }

    private EnergyView view(String order, String packs, Optional<String> packType) {
        return EnergyView.of(drawing.of(order).packs(packType).view(), (int) Drawing.number(packs));
    }
}

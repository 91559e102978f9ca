package wainbook.page.calculation;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wainbook.page.calculation.CalculationPages.Group;
import wainbook.page.calculation.CalculationView.Described;

/** Every calculation for people. What is asked stands in the address, so that a result can be opened again and shown. */
@Path("/calculations")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class CalculationPage {

    private final Calculations calculations;

    CalculationPage(Calculations calculations) {
        this.calculations = calculations;
    }

    @GET
    public TemplateInstance list() {
        Map<String, List<Described>> groups = calculations.all().stream()
                .map(Sheet::forPeople)
                .collect(Collectors.groupingBy(Described::group, TreeMap::new, Collectors.toList()));
        return CalculationPages.calculations(groups.entrySet().stream()
                .map(group -> new Group(group.getKey(), group.getValue()))
                .toList());
    }

    @GET
    @Path("{name}")
    public Response one(String name, UriInfo address) {
        Sheet<?, ?> sheet = calculations.named(name).orElseThrow(NotFoundException::new);
        Map<String, String> typed = new LinkedHashMap<>();
        address.getQueryParameters().forEach((field, values) -> typed.put(field, String.join(" ", values)));
        CalculationView view = typed.isEmpty() ? sheet.empty() : sheet.answer(typed);
        return Response.status(view.status())
                .entity(CalculationPages.calculation(view))
                .build();
    }
}

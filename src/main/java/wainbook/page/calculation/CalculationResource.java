package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** The list of calculations, and one calculation for a script. Nothing is changed by asking. */
@Path("/api/v1/calculations")
@Authenticated
class CalculationResource {

    private final Calculations calculations;

    CalculationResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    public List<ObjectNode> list() {
        return calculations.all().stream().map(Sheet::described).toList();
    }

    @POST
    @Path("{name}")
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces({MediaType.APPLICATION_JSON, "application/problem+json"})
    public Response answer(@PathParam("name") String name, String body) {
        Reply reply = calculations
                .named(name)
                .map(sheet -> Body.read(body, sheet::answer))
                .orElseGet(() -> Reply.unknown(name));
        JsonNode content = reply.body();
        return Response.status(reply.status())
                .type(reply.mediaType())
                .entity(content.toString())
                .build();
    }
}

package wainbook.trace;

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

/** One box, and what it finds: as a page, a file and for scripts. */
@Path("/")
@Authenticated
public class TracePage {

    private final Tracing tracing;

    TracePage(Tracing tracing) {
        this.tracing = tracing;
    }

    @GET
    @Path("trace")
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance trace(@RestQuery Optional<String> q, @RestQuery Optional<Integer> page) {
        return TracePages.trace(search(q, page));
    }

    @GET
    @Path("trace.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> q) {
        return Csv.file(
                "trace",
                Arrays.asList(Words.of("trace.csvHeader").split(";")),
                tracing.all(q.orElse("")).lines());
    }

    @GET
    @Path("api/v1/trace")
    @Produces(MediaType.APPLICATION_JSON)
    public Trace found(@RestQuery Optional<String> q, @RestQuery Optional<Integer> page) {
        return search(q, page);
    }

    private Trace search(Optional<String> q, Optional<Integer> page) {
        int leaf = Math.max(1, Math.min(page.orElse(1), 10_000));
        return tracing.search(q.orElse(""), leaf);
    }
}

package wainbook.matter.page;

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
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatters;
import wainbook.page.Csv;
import wainbook.page.SignedIn;
import wainbook.page.Words;

/** Every open matter of the works, as a page, a file and for scripts. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class MattersPage {

    private final OpenMatters open;
    private final SignedIn signedIn;

    MattersPage(OpenMatters open, SignedIn signedIn) {
        this.open = open;
        this.signedIn = signedIn;
    }

    @GET
    @Path("matters")
    public TemplateInstance matters(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> sort,
            @RestQuery Optional<String> order,
            @RestQuery Optional<String> owner) {
        return MatterPages.matters(list(search, sort, order, owner));
    }

    @GET
    @Path("matters.csv")
    @Produces("text/csv")
    public Response csv(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> sort,
            @RestQuery Optional<String> order,
            @RestQuery Optional<String> owner) {
        List<List<String>> rows = list(search, sort, order, owner).shown().stream()
                .map(OpenMatter::cells)
                .toList();
        return Csv.file("matters", Arrays.asList(Words.of("matter.csvHeader").split(";")), rows);
    }

    @GET
    @Path("api/v1/matters")
    @Produces(MediaType.APPLICATION_JSON)
    public List<OpenMatter> all(
            @RestQuery Optional<String> search,
            @RestQuery Optional<String> sort,
            @RestQuery Optional<String> order,
            @RestQuery Optional<String> owner) {
        return list(search, sort, order, owner).shown();
    }

    private MatterList list(
            Optional<String> search, Optional<String> sort, Optional<String> order, Optional<String> owner) {
        return new MatterList(
                open.all(signedIn.now().at()),
                new MatterList.Wanted(text(search), text(sort), text(order), text(owner)));
    }

    private static String text(Optional<String> typed) {
        return typed.map(String::strip).orElse("");
    }
}

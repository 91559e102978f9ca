package wainbook.matter;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.matter.OpenMatters.OpenMatter;
import wainbook.page.Csv;
import wainbook.page.Form;
import wainbook.page.Words;

/** Every open matter of the works. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class MattersPage {

    private final OpenMatters open;

    MattersPage(OpenMatters open) {
        this.open = open;
    }

    @GET
    @Path("matters")
    public TemplateInstance matters(@RestQuery Optional<String> search, @RestQuery Optional<String> sort) {
        String text = search.map(String::strip).orElse("");
        String query = "?search=" + URLEncoder.encode(text, StandardCharsets.UTF_8) + "&sort="
                + URLEncoder.encode(sort.orElse(""), StandardCharsets.UTF_8);
        Form form = Form.EMPTY.with("search", text).with("sort", sort.orElse(""));
        return MatterPages.matters(found(text, sort), form, "/matters.csv" + query);
    }

    @GET
    @Path("matters.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> sort) {
        List<List<String>> rows = found(search.map(String::strip).orElse(""), sort).stream()
                .map(one -> List.of(
                        one.order(), one.title(), one.what(), one.since().toString(), one.bars()))
                .toList();
        return Csv.file("matters", Arrays.asList(Words.of("matter.csvHeader").split(";")), rows);
    }

    private List<OpenMatter> found(String text, Optional<String> sort) {
        return open.all().stream()
                .filter(one -> one.holds(text))
                .filter(one -> sort.filter(word -> !word.isEmpty())
                        .map(one.sort().name()::equals)
                        .orElse(true))
                .toList();
    }
}

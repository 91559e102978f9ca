package wainbook.pack.page;

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
import wainbook.pack.page.view.PackLine;
import wainbook.pack.page.view.PackList;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** All packs. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class PacksPage {

    private final PackLook look;
    private final SignedIn signedIn;

    PacksPage(PackLook look, SignedIn signedIn) {
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    @Path("packs")
    public TemplateInstance all(@RestQuery Optional<String> search, @RestQuery Optional<String> standing) {
        return PackPages.packs(list(search.orElse(""), standing.orElse("")));
    }

    private PackList list(String search, String standing) {
        return look.list(search.strip(), standing, signedIn.is(Role.worksEngineer), Filled.fresh(), signedIn.now());
    }

    @GET
    @Path("packs.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> standing) {
        return Csv.file(
                "packs",
                Arrays.asList(Words.of("pack.csvHeader").split(";")),
                list(search.orElse(""), standing.orElse("")).shown().stream()
                        .map(PackLine::cells)
                        .toList());
    }
}

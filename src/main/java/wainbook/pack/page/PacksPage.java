package wainbook.pack.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.pack.act.Keeping;
import wainbook.page.Csv;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.page.Words;
import wainbook.works.Role;

/** All packs, and which parts are packs of this works. */
@Path("/")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class PacksPage {

    private final PackLook look;
    private final Keeping keeping;
    private final SignedIn signedIn;

    PacksPage(PackLook look, Keeping keeping, SignedIn signedIn) {
        this.look = look;
        this.keeping = keeping;
        this.signedIn = signedIn;
    }

    @GET
    @Path("packs")
    public TemplateInstance all(@RestQuery Optional<String> search, @RestQuery Optional<String> standing) {
        return PackPages.packs(list(search.orElse(""), standing.orElse(""), Filled.fresh()));
    }

    private PackList list(String search, String standing, Filled keeps) {
        return look.list(search.strip(), standing, signedIn.is(Role.worksEngineer), keeps, signedIn.now());
    }

    @GET
    @Path("packs.csv")
    @Produces("text/csv")
    public Response csv(@RestQuery Optional<String> search, @RestQuery Optional<String> standing) {
        return Csv.file(
                "packs",
                Arrays.asList(Words.of("pack.csvHeader").split(";")),
                list(search.orElse(""), standing.orElse(""), Filled.fresh()).shown().stream()
                        .map(PackLine::cells)
                        .toList());
    }

    @POST
    @Path("packs/parts")
    @RolesAllowed(Role.worksEngineer)
    public Response keep(@RestForm String id, @RestForm String part, @RestForm String kept) {
        Filled filled = Filled.sent(id).with("part", part);
        return filled.answer(
                keeping.keep(
                        new Keeping.ToKeep(filled.id(), filled.value("part"), !"no".equals(kept)), signedIn.actor()),
                "/packs#parts",
                again -> PackPages.packs(list("", "", again)));
    }
}

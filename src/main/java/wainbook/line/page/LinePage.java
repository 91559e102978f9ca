package wainbook.line.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import wainbook.page.SignedIn;

/** The line: every station from the end to the start, and what stands beside it. */
@Path("/line")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class LinePage {

    private final LineLook look;
    private final SignedIn signedIn;

    LinePage(LineLook look, SignedIn signedIn) {
        this.look = look;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance line() {
        return LinePages.line(look.at(signedIn.now().at()));
    }

    @GET
    @Path("stations")
    public TemplateInstance stations() {
        return LinePages.stations(look.at(signedIn.now().at()));
    }
}

package wainbook.line.stringline.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestHeader;
import wainbook.line.stringline.StringLine;
import wainbook.line.stringline.StringLines;
import wainbook.page.SignedIn;
import wainbook.page.Words;

/** The line over time: a part of the line page, of the forecast and of a vehicle's page, and a page of its own. */
@Path("/line/over-time")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class StringLinePage {

    private final StringLines lines;
    private final SignedIn signedIn;

    StringLinePage(StringLines lines, SignedIn signedIn) {
        this.lines = lines;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance whole(@RestHeader("HX-Request") Optional<String> part) {
        return drawn(Words.of("line.stringWhole"), lines.whole(signedIn.now().at()), part);
    }

    @GET
    @Path("shortly")
    public TemplateInstance shortly(@RestHeader("HX-Request") Optional<String> part) {
        return drawn(Words.of("line.stringShort"), lines.shortly(signedIn.now().at()), part);
    }

    @GET
    @Path("{order}")
    public TemplateInstance of(@PathParam("order") String order, @RestHeader("HX-Request") Optional<String> part) {
        return drawn(
                Words.of("line.stringOf", order), lines.of(order, signedIn.now().at()), part);
    }

    private static TemplateInstance drawn(String title, Optional<StringLine> picture, Optional<String> part) {
        return part.isPresent() ? StringLinePages.strings(picture) : StringLinePages.stringPage(title, picture);
    }
}

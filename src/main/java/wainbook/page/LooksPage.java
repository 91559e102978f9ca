package wainbook.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** Shows every part in each of its states, so that whoever changes one sees them all. */
@Path("/looks")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class LooksPage {

    @GET
    public TemplateInstance looks() {
        return Pages.looks(Looks.invented());
    }
}

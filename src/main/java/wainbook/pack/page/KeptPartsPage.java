package wainbook.pack.page;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import wainbook.pack.act.Keeping;
import wainbook.page.Filled;
import wainbook.page.SignedIn;
import wainbook.works.Role;

/** Which parts are packs of this works. */
@Path("/packs/parts")
@RolesAllowed(Role.worksEngineer)
@Produces(MediaType.TEXT_HTML)
public class KeptPartsPage {

    private final PackLook look;
    private final Keeping keeping;
    private final SignedIn signedIn;

    KeptPartsPage(PackLook look, Keeping keeping, SignedIn signedIn) {
        this.look = look;
        this.keeping = keeping;
        this.signedIn = signedIn;
    }

    @POST
    public Response keep(@RestForm String id, @RestForm String part, @RestForm String kept) {
        Filled filled = Filled.sent(id).with("part", part);
        return filled.answer(
                keeping.keep(
                        new Keeping.ToKeep(filled.id(), filled.value("part"), !"no".equals(kept)), signedIn.actor()),
                "/packs#parts",
                again -> PackPages.packs(look.list("", "", true, again, signedIn.now())));
    }
}

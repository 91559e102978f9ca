package wainbook.pack.page;

import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.pack.Serials;
import wainbook.pack.Trigger;
import wainbook.pack.WhereFitted;
import wainbook.pack.act.Quarantining;
import wainbook.pack.act.Quarantining.ToQuarantine;
import wainbook.pack.page.view.DamagedView;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;

/** Sets a pack aside as damaged. Open to everybody; nothing but the serial must be said. */
@Path("/packs/damaged")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class DamagedPage {

    private final Quarantining quarantining;
    private final WhereFitted fitted;
    private final SignedIn signedIn;

    DamagedPage(Quarantining quarantining, WhereFitted fitted, SignedIn signedIn) {
        this.quarantining = quarantining;
        this.fitted = fitted;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(@RestQuery Optional<String> serial) {
        return draw(serial.map(text -> Filled.fresh().with("serial", text)).orElseGet(Filled::fresh));
    }

    private TemplateInstance draw(Filled filled) {
        Optional<String> order =
                Optional.of(filled.value("serial")).filter(Serials::fits).flatMap(fitted::order);
        return PackPages.damaged(new DamagedView(filled, order));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response quarantine(MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        String serial = form.text("serial");
        if (!Serials.fits(serial)) {
            form.wrong("serial", "pack.serialFault");
            return form.filled().again(this::draw);
        }
        var asked = new ToQuarantine(
                form.filled().id(),
                serial,
                form.maybeOne("trigger", Trigger.values()).orElse(Trigger.OTHER),
                form.text("heating").equals("yes"),
                form.maybe("place"),
                form.maybe("lot"),
                form.maybe("words"));
        return form.filled().answer(quarantining.quarantine(asked, signedIn.actor()), "/packs/" + serial, this::draw);
    }
}

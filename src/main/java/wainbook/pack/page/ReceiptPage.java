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
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.Serials;
import wainbook.pack.act.OwnInsulation;
import wainbook.pack.act.Receiving;
import wainbook.pack.act.Receiving.ToReceive;
import wainbook.pack.page.view.Prefix;
import wainbook.pack.page.view.ReceiptView;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;

/** Takes a pack in. */
@Path("/packs/new")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class ReceiptPage {

    private final Receiving receiving;
    private final SignedIn signedIn;

    ReceiptPage(Receiving receiving, SignedIn signedIn) {
        this.receiving = receiving;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance form(@RestQuery Optional<String> serial) {
        List<Reason> bars = receiving.againstReceiving(signedIn.now());
        if (!bars.isEmpty()) {
            return draw(Filled.fresh().against(bars));
        }
        Filled filled = Filled.fresh().with("prefix", Prefix.MEGA.name()).with("shown", "value");
        return draw(serial.map(text -> filled.with("serial", text)).orElse(filled));
    }

    private TemplateInstance draw(Filled filled) {
        return PackPages.receipt(new ReceiptView(filled));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response receive(MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        ToReceive asked = asked(form);
        if (!Serials.fits(asked.serial())) {
            form.wrong("serial", "pack.serialFault");
        }
        return form.right()
                ? form.filled()
                        .answer(receiving.receive(asked, signedIn.actor()), "/packs/" + asked.serial(), this::draw)
                : form.filled().again(this::draw);
    }

    private static ToReceive asked(SentForm form) {
        BigDecimal shown = form.number("measured");
        Prefix prefix = form.one("prefix", Prefix.values());
        return new ToReceive(
                form.filled().id(),
                form.text("serial"),
                form.text("packType"),
                form.text("lot"),
                form.day("made"),
                form.number("chargePercent"),
                form.number("voltageV"),
                Arrays.stream(Looked.values())
                        .map(look -> new Seen(look, form.yes(look.name())))
                        .toList(),
                new OwnInsulation(
                        form.one("way", Way.values()),
                        prefix.ohm(shown),
                        form.text("shown").equals("ceiling"),
                        form.number("testV"),
                        form.number("workingV"),
                        form.text("instrument")),
                form.maybe("testSummary"),
                form.maybe("certificate"),
                form.text("place"),
                form.maybe("words"));
    }
}

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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.act.Reason;
import wainbook.ledger.Ledger;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.Serials;
import wainbook.pack.TransportNote;
import wainbook.pack.TransportNote.Condition;
import wainbook.pack.act.Judging;
import wainbook.pack.act.SendingOff;
import wainbook.pack.act.StorageChecking;
import wainbook.pack.act.Watching;
import wainbook.pack.page.view.CheckView;
import wainbook.pack.page.view.PackLine;
import wainbook.pack.page.view.TransportView;
import wainbook.page.Filled;
import wainbook.page.SentForm;
import wainbook.page.SignedIn;

/** One pack: how it stands, what is done with it, and its note for transport. */
@Path("/packs/{serial: " + Serials.FORM + "}")
@Authenticated
@Produces(MediaType.TEXT_HTML)
public class PackPage {

    private final PackLook look;
    private final StorageChecking checking;
    private final Watching watching;
    private final Judging judging;
    private final SendingOff sending;
    private final Ledger ledger;
    private final SignedIn signedIn;

    PackPage(
            PackLook look,
            StorageChecking checking,
            Watching watching,
            Judging judging,
            SendingOff sending,
            Ledger ledger,
            SignedIn signedIn) {
        this.look = look;
        this.checking = checking;
        this.watching = watching;
        this.judging = judging;
        this.sending = sending;
        this.ledger = ledger;
        this.signedIn = signedIn;
    }

    @GET
    public TemplateInstance one(String serial) {
        return draw(serial, Filled.fresh());
    }

    private TemplateInstance draw(String serial, Filled filled) {
        return PackPages.pack(look.view(serial, filled, signedIn.now()));
    }

    @GET
    @Path("check")
    public TemplateInstance check(String serial) {
        Pack pack = look.known(serial);
        List<Reason> bars = checking.against(ledger.history(Serials.subject(serial)), signedIn.now());
        return drawCheck(
                serial,
                bars.isEmpty()
                        ? Filled.fresh().with("place", pack.place().orElse(""))
                        : Filled.fresh().against(bars));
    }

    private TemplateInstance drawCheck(String serial, Filled filled) {
        return PackPages.check(new CheckView(look.line(look.known(serial), signedIn.now()), filled));
    }

    @POST
    @Path("check")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response checked(String serial, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new StorageChecking.ToCheck(
                form.filled().id(),
                serial,
                form.number("chargePercent"),
                form.number("temperatureC"),
                form.yes("dry"),
                form.text("place"),
                form.maybe("words"));
        return form.right()
                ? form.filled()
                        .answer(
                                checking.check(asked, signedIn.actor()),
                                "/packs/" + serial,
                                again -> drawCheck(serial, again))
                : form.filled().again(again -> drawCheck(serial, again));
    }

    @POST
    @Path("watch")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response watched(String serial, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        var asked = new Watching.ToWatch(
                form.filled().id(), serial, form.number("packC"), form.number("ambientC"), Optional.empty());
        return form.right()
                ? form.filled()
                        .answer(
                                watching.watch(asked, signedIn.actor()),
                                "/packs/" + serial,
                                again -> draw(serial, again))
                : form.filled().again(again -> draw(serial, again));
    }

    @POST
    @Path("judgement")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response judged(String serial, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        Judgement judgement = form.one("judgement", Judgement.values());
        return form.right()
                ? form.filled()
                        .answer(
                                judging.judge(
                                        new Judging.ToJudge(form.filled().id(), serial, judgement, form.text("words")),
                                        signedIn.actor()),
                                "/packs/" + serial,
                                again -> draw(serial, again))
                : form.filled().again(again -> draw(serial, again));
    }

    @POST
    @Path("sending")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response sent(String serial, MultivaluedMap<String, String> sent) {
        SentForm form = SentForm.of(sent);
        return form.filled()
                .answer(
                        sending.send(
                                new SendingOff.ToSend(form.filled().id(), serial, form.text("to"), Optional.empty()),
                                signedIn.actor()),
                        "/packs/" + serial,
                        again -> draw(serial, again));
    }

    @GET
    @Path("transport")
    public TemplateInstance transport(
            String serial, @RestQuery Optional<String> condition, @RestQuery Optional<String> load) {
        Pack pack = look.known(serial);
        PackLine line = look.line(pack, signedIn.now());
        Condition onRecord = TransportNote.of(pack);
        Condition wanted = Arrays.stream(Condition.values())
                .filter(one -> condition.filter(one.name()::equals).isPresent())
                .findFirst()
                .orElse(onRecord);
        boolean inVehicle = load.map("vehicle"::equals).orElse(line.order().isPresent());
        return PackPages.transport(new TransportView(line, pack, new TransportNote(wanted, inVehicle), onRecord));
    }
}

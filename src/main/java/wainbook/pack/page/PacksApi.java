package wainbook.pack.page;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.Quarantine;
import wainbook.pack.Serials;
import wainbook.pack.Trigger;
import wainbook.pack.act.Judging;
import wainbook.pack.act.OwnInsulation;
import wainbook.pack.act.Quarantining;
import wainbook.pack.act.Receiving;
import wainbook.pack.act.SendingOff;
import wainbook.pack.act.StorageChecking;
import wainbook.pack.act.Watching;
import wainbook.pack.page.view.PackLine;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;

/** Packs for scripts. */
@Path("/api/v1/packs")
@Authenticated
public class PacksApi {

    /** A pack as it stands. */
    public record One(
            String serial,
            PackLine.Standing standing,
            Optional<PackReceived> received,
            Optional<String> place,
            Optional<LocalDate> checkDue,
            Optional<Instant> nextWatch,
            boolean watchLate,
            Optional<String> fittedIn) {

        static One of(Pack pack, PackLine line) {
            return new One(
                    pack.serial(),
                    line.standing(),
                    pack.received(),
                    pack.place(),
                    line.due(),
                    pack.quarantine()
                            .filter(Quarantine::stands)
                            .flatMap(one -> one.times().next()),
                    line.watchLate(),
                    line.order());
        }
    }

    /** One line of the list. */
    public record Listed(String serial, PackLine.Standing standing, Optional<String> fittedIn) {}

    /** A receipt inspection. */
    public record New(
            UUID id,
            String serial,
            String packType,
            String lot,
            LocalDate made,
            BigDecimal chargePercent,
            BigDecimal voltageV,
            List<Seen> looked,
            OwnInsulation read,
            Optional<String> testSummary,
            Optional<String> certificate,
            String place,
            Optional<String> words) {}

    /** A check in storage. */
    public record Checked(
            UUID id,
            BigDecimal chargePercent,
            BigDecimal temperatureC,
            boolean dry,
            String place,
            Optional<String> words) {}

    /** Damage; all but the id may be left out. */
    public record Damaged(
            UUID id,
            Optional<Trigger> trigger,
            Optional<Boolean> heating,
            Optional<String> place,
            Optional<String> lot,
            Optional<String> words) {}

    /** A reading of the watch, both in °C. */
    public record Read(UUID id, BigDecimal packC, BigDecimal ambientC, Optional<String> words) {}

    /** What a qualified person found. */
    public record Found(UUID id, Judgement judgement, String words) {}

    /** Where it went. */
    public record Sent(UUID id, String to, Optional<String> words) {}

    private static final String ONE = "{serial: " + Serials.FORM + "}";

    private final PackLook look;
    private final Receiving receiving;
    private final StorageChecking checking;
    private final Quarantining quarantining;
    private final Watching watching;
    private final Judging judging;
    private final SendingOff sending;
    private final SignedIn signedIn;

    PacksApi(
            PackLook look,
            Receiving receiving,
            StorageChecking checking,
            Quarantining quarantining,
            Watching watching,
            Judging judging,
            SendingOff sending,
            SignedIn signedIn) {
        this.look = look;
        this.receiving = receiving;
        this.checking = checking;
        this.quarantining = quarantining;
        this.watching = watching;
        this.judging = judging;
        this.sending = sending;
        this.signedIn = signedIn;
    }

    @GET
    public List<Listed> all() {
        return look.lines(signedIn.now()).stream()
                .map(line -> new Listed(line.row().serial, line.standing(), line.order()))
                .toList();
    }

    @GET
    @Path(ONE)
    public One one(String serial) {
        Pack pack = look.known(serial);
        return One.of(pack, look.line(pack, signedIn.now()));
    }

    @POST
    public Response receive(New body) {
        return Receipt.of(receiving.receive(
                new Receiving.ToReceive(
                        body.id,
                        body.serial,
                        body.packType,
                        body.lot,
                        body.made,
                        body.chargePercent,
                        body.voltageV,
                        body.looked,
                        body.read,
                        body.testSummary,
                        body.certificate,
                        body.place,
                        body.words),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/checks")
    public Response check(String serial, Checked body) {
        return Receipt.of(checking.check(
                new StorageChecking.ToCheck(
                        body.id, serial, body.chargePercent, body.temperatureC, body.dry, body.place, body.words),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/quarantine")
    public Response quarantine(String serial, Damaged body) {
        return Receipt.of(quarantining.quarantine(
                new Quarantining.ToQuarantine(
                        body.id,
                        serial,
                        body.trigger.orElse(Trigger.OTHER),
                        body.heating.orElse(false),
                        body.place,
                        body.lot,
                        body.words),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/watch")
    public Response watch(String serial, Read body) {
        return Receipt.of(watching.watch(
                new Watching.ToWatch(body.id, serial, body.packC, body.ambientC, body.words), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/judgement")
    public Response judge(String serial, Found body) {
        return Receipt.of(
                judging.judge(new Judging.ToJudge(body.id, serial, body.judgement, body.words), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/sending")
    public Response send(String serial, Sent body) {
        return Receipt.of(sending.send(new SendingOff.ToSend(body.id, serial, body.to, body.words), signedIn.actor()));
    }
}

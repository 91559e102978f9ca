package wainbook.station.entry;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.WorkOrder;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Bar;
import wainbook.station.deferral.Deferral;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.joint.BoltReading;
import wainbook.station.joint.RecheckInWords;
import wainbook.station.work.Workplace;
import wainbook.works.Role;

/** Work at the vehicle for scripts, scanners and connected tools. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}")
public class EntryApi {

    /** An entry to be; the reply holds what the item asks. */
    public record Entered(UUID id, String item, Optional<String> instrument, Reply reply) {}

    /** A void to be. */
    public record ToVoid(UUID id, UUID entry, String reason) {}

    /** An item to be given to a later stage, with what must not be done until it is finished. */
    public record ReSequenced(UUID id, String item, String toStage, List<Bar> bars, String reason) {}

    /** An item to be finished at a later stage by somebody. */
    public record CarriedOver(UUID id, String item, String toStage, String owner, String reason) {}

    /** A second check that the operator is to make. */
    public record HandedOn(UUID id, String item, String reason) {}

    /**
     * An item in a few words.
     *
     * @param findings what its last result did not pass for, bolt by bolt
     */
    public record Line(
            String item,
            String title,
            ItemState.Status status,
            int triesLeft,
            Optional<UUID> passing,
            List<String> findings) {}

    /** The sheet in hand. */
    public record Sheet(long seen, String stage, String sheet, int revision, List<Line> items) {}

    private final Ledger ledger;
    private final Workplace workplace;
    private final Recording recording;
    private final Voiding voiding;
    private final Deferral deferral;
    private final EvidenceFiles files;
    private final SignedIn signedIn;

    EntryApi(
            Ledger ledger,
            Workplace workplace,
            Recording recording,
            Voiding voiding,
            Deferral deferral,
            EvidenceFiles files,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.recording = recording;
        this.voiding = voiding;
        this.deferral = deferral;
        this.files = files;
        this.signedIn = signedIn;
    }

    @GET
    @Path("sheet")
    @Authenticated
    public Sheet sheet(String order) {
        var history = ledger.history(Subject.workOrder(order));
        return WorkOrder.of(history)
                .flatMap(known -> known.stage().flatMap(stage -> workplace.record(history, known, stage)))
                .map(record -> sheet(history.number(), record))
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("entries")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response record(String order, Entered body) {
        return Receipt.of(recording.record(
                new Recording.ToRecord(body.id, order, body.item, body.instrument, body.reply), signedIn.actor()));
    }

    @POST
    @Path("voids")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector})
    public Response voidEntry(String order, ToVoid body) {
        return Receipt.of(
                voiding.voidEntry(new Voiding.ToVoid(body.id, order, body.entry, body.reason), signedIn.actor()));
    }

    @POST
    @Path("re-sequenced")
    @RolesAllowed(Role.worksEngineer)
    public Response reSequence(String order, ReSequenced body) {
        return Receipt.of(deferral.reSequence(
                new Deferral.ToReSequence(body.id, order, body.item, body.toStage, body.bars, body.reason),
                signedIn.actor()));
    }

    @POST
    @Path("carried-over")
    @RolesAllowed({Role.teamLeader, Role.lineManager, Role.worksEngineer})
    public Response carryOver(String order, CarriedOver body) {
        return Receipt.of(deferral.carryOver(
                new Deferral.ToCarryOver(body.id, order, body.item, body.toStage, body.owner, body.reason),
                signedIn.actor()));
    }

    @POST
    @Path("handed-on")
    @RolesAllowed({Role.lineManager, Role.worksEngineer, Role.qualityEngineer})
    public Response handOn(String order, HandedOn body) {
        return Receipt.of(
                deferral.handOn(new Deferral.ToHandOn(body.id, order, body.item, body.reason), signedIn.actor()));
    }

    /** Hands a file in; an entry then names it by its fingerprint. */
    @POST
    @Path("files")
    @Consumes({"image/jpeg", "image/png", "image/webp", "application/pdf"})
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.handoverClerk})
    public EvidenceFile handIn(String order, byte[] content, jakarta.ws.rs.core.HttpHeaders headers) {
        var type = headers.getMediaType();
        return files.keep(content, type.getType() + "/" + type.getSubtype());
    }

    private static Sheet sheet(long seen, StageRecord record) {
        return new Sheet(
                seen,
                record.stage(),
                record.binding().sheet(),
                record.binding().revision(),
                record.items().stream()
                        .map(state -> new Line(
                                state.key(),
                                state.item().title(),
                                state.status(),
                                state.triesLeft(),
                                state.passing().map(wainbook.ledger.Entry::id),
                                findings(state)))
                        .toList());
    }

    private static List<String> findings(ItemState state) {
        return state.entries().stream()
                .filter(entry -> entry.saying() instanceof StationSaying.Result)
                .reduce((former, latter) -> latter)
                .map(entry -> {
                    if (entry.saying() instanceof StationSaying.Tightened said) {
                        return BoltReading.findings(said);
                    }
                    if (entry.saying() instanceof StationSaying.Determined said) {
                        return DeterminedInWords.findings(said);
                    }
                    return entry.saying() instanceof StationSaying.Rechecked said
                            ? RecheckInWords.findings(said)
                            : List.<String>of();
                })
                .orElse(List.of());
    }
}

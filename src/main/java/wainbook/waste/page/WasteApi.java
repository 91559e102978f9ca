package wainbook.waste.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.ContainerRow;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.Assessment;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.WasteSaying.PutIn;
import wainbook.waste.WasteSaying.ReturnNoted;
import wainbook.waste.act.Closing;
import wainbook.waste.act.Collecting;
import wainbook.waste.act.Opening;
import wainbook.waste.act.PuttingIn;
import wainbook.waste.act.Returning;
import wainbook.works.Role;

/** Containers of waste, and the List of Waste as this trade meets it, for scripts. */
@Path("/api/v1/waste")
@Authenticated
public class WasteApi {

    /** A container as it stands; {@code seen} is what its collection may carry. */
    public record One(
            String label,
            long seen,
            String code,
            BigDecimal massKg,
            BigDecimal filled,
            BigDecimal capacity,
            Measure measure,
            boolean isSealed,
            Instant since,
            List<PutIn> inside,
            Optional<Collected> collected,
            Optional<ReturnNoted> returned) {}

    /** A container to be; {@code askAfterDays} is the works' own number. */
    public record New(
            UUID id,
            String label,
            String code,
            BigDecimal capacity,
            Measure measure,
            String place,
            boolean bund,
            boolean lid,
            Optional<Assessment> assessment,
            int askAfterDays) {}

    /** Something to put in, or to take back with its reason. */
    public record Put(UUID id, String order, String thing, Optional<String> reason) {}

    /** Nothing but the id. */
    public record Seal(UUID id) {}

    /** All that a note says but what the record knows. */
    public record Note(
            UUID id,
            Optional<Long> seen,
            String code,
            String producer,
            String sic,
            String process,
            Optional<String> components,
            Optional<String> hazards,
            String packing,
            Optional<String> transport,
            Optional<BigDecimal> weighbridgeKg,
            Optional<String> weighbridge,
            String carrier,
            String registration,
            LocalDate registrationSeenOn,
            String vehicle,
            String site,
            String permit,
            LocalDate permitSeenOn) {}

    /** What the site said, in kilograms that make up the note. */
    public record Back(
            UUID id,
            LocalDate on,
            String reference,
            BigDecimal recycledKg,
            BigDecimal energyKg,
            BigDecimal disposedKg) {}

    private static final String ONE = "containers/{label: " + Labels.FORM + "}";

    private final Ledger ledger;
    private final Opening opening;
    private final PuttingIn puttingIn;
    private final Closing closing;
    private final Collecting collecting;
    private final Returning returning;
    private final SignedIn signedIn;

    WasteApi(
            Ledger ledger,
            Opening opening,
            PuttingIn puttingIn,
            Closing closing,
            Collecting collecting,
            Returning returning,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.opening = opening;
        this.puttingIn = puttingIn;
        this.closing = closing;
        this.collecting = collecting;
        this.returning = returning;
        this.signedIn = signedIn;
    }

    @GET
    @Path("codes")
    public ListOfWaste codes() {
        return ListOfWaste.ours();
    }

    @GET
    @Path("containers")
    public List<One> all() {
        return ContainerRow.all().stream().map(row -> one(row.label)).toList();
    }

    @GET
    @Path(ONE)
    public One one(String label) {
        var history = ledger.history(Labels.subject(label));
        Container known = Container.of(history).orElseThrow(NotFoundException::new);
        return new One(
                known.label(),
                history.number(),
                known.row().code(),
                known.massKg(),
                known.filled(),
                known.opened().capacity(),
                known.opened().measure(),
                known.sealedBy().isPresent(),
                known.since(),
                known.inside(),
                known.collected(),
                known.returned());
    }

    @POST
    @Path("containers")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response open(New body) {
        return Receipt.of(opening.open(
                new Opening.ToOpen(
                        body.id,
                        body.label,
                        body.code,
                        body.capacity,
                        body.measure,
                        body.place,
                        body.bund,
                        body.lid,
                        body.assessment,
                        body.askAfterDays),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/contents")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response put(String label, Put body) {
        return Receipt.of(puttingIn.put(new PuttingIn.ToPut(body.id, label, body.order, body.thing), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/contents/voiding")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response undo(String label, Put body) {
        return Receipt.of(puttingIn.undo(
                new PuttingIn.ToVoid(body.id, label, body.order, body.thing, body.reason.orElse("")),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/seal")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.worksEngineer, Role.lineManager, Role.handoverClerk})
    public Response seal(String label, Seal body) {
        return Receipt.of(closing.seal(new Closing.ToSeal(body.id, label), signedIn.actor()));
    }

    @POST
    @Path(ONE + "/collection")
    @RolesAllowed({Role.handoverClerk, Role.lineManager, Role.teamLeader})
    public Response collect(String label, Note body) {
        return Receipt.of(collecting.collect(
                new Collecting.ToCollect(
                        body.id,
                        label,
                        body.seen,
                        body.code,
                        body.producer,
                        body.sic,
                        body.process,
                        body.components.orElse(""),
                        body.hazards.orElse(""),
                        body.packing,
                        body.transport.orElse(""),
                        body.weighbridgeKg,
                        body.weighbridge,
                        body.carrier,
                        body.registration,
                        body.registrationSeenOn,
                        body.vehicle,
                        body.site,
                        body.permit,
                        body.permitSeenOn),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/return")
    @RolesAllowed({Role.handoverClerk, Role.lineManager, Role.teamLeader})
    public Response back(String label, Back body) {
        return Receipt.of(returning.note(
                new Returning.ToReturn(
                        body.id, label, body.on, body.reference, body.recycledKg, body.energyKg, body.disposedKg),
                signedIn.actor()));
    }
}

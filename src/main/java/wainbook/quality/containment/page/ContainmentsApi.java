package wainbook.quality.containment.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.SignedIn;
import wainbook.page.api.Receipt;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.containment.Closing;
import wainbook.quality.containment.Containment;
import wainbook.quality.containment.ContainmentRow;
import wainbook.quality.containment.Deciding;
import wainbook.quality.containment.Deciding.Checked;
import wainbook.quality.containment.Opening;
import wainbook.quality.containment.page.view.ContainmentsView;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubtRow;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.works.Role;

/** Containments for scripts. */
@Path("/api/v1/containments")
public class ContainmentsApi {

    private static final String ONE = ContainmentsPage.CODE;

    /** One in the list. */
    public record Listed(
            String containment,
            String sort,
            String about,
            String reason,
            Instant openedAt,
            boolean closed,
            int vehicles,
            int sureOut,
            int possible,
            int safe,
            int open) {}

    /** One with every vehicle that it touches. */
    public record One(DoubtOpened opened, boolean closed, List<String> untold, List<OnVehicle> vehicles) {}

    /** What it came to on a vehicle. */
    public record OnVehicle(String order, VehicleDoubt doubt) {}

    /** A containment that a person opens. */
    public record New(UUID id, About about, Optional<Window> window, String reason, Optional<Boolean> holdsAll) {}

    /** What settles readings of a vehicle. */
    public record Decided(
            UUID id,
            String order,
            List<Place> places,
            Disposition disposition,
            String reason,
            Optional<Checked> checked) {}

    /** Why it can be closed. */
    public record Close(UUID id, String reason) {}

    private final Ledger ledger;
    private final ContainmentLook look;
    private final wainbook.quality.containment.Containments containments;
    private final Opening opening;
    private final Deciding deciding;
    private final Closing closing;
    private final SignedIn signedIn;

    ContainmentsApi(
            Ledger ledger,
            ContainmentLook look,
            wainbook.quality.containment.Containments containments,
            Opening opening,
            Deciding deciding,
            Closing closing,
            SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.containments = containments;
        this.opening = opening;
        this.deciding = deciding;
        this.closing = closing;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public List<Listed> all() {
        return ContainmentsView.Line.all("", "").stream()
                .map(ContainmentsApi::listed)
                .toList();
    }

    private static Listed listed(ContainmentsView.Line line) {
        ContainmentRow row = line.row();
        return new Listed(
                row.code,
                row.sort.name(),
                row.about,
                row.reason,
                row.openedAt,
                row.closed,
                line.vehicles().size(),
                line.sureOut(),
                line.possible(),
                line.safe(),
                line.open());
    }

    @GET
    @Path(ONE)
    @Authenticated
    public One one(String code) {
        Containment containment = look.known(code);
        return ledger.drawing(() -> new One(
                containment.said(),
                !containment.isOpen(),
                containments.untold(containment),
                VehicleDoubtRow.of(code).stream()
                        .flatMap(row -> VehicleDoubts.of(ledger.history(Subject.workOrder(row.workOrder)))
                                .of(code)
                                .map(doubt -> new OnVehicle(row.workOrder, doubt))
                                .stream())
                        .toList()));
    }

    @POST
    @RolesAllowed({Role.qualityEngineer, Role.worksEngineer})
    public Response open(New body) {
        return Receipt.of(opening.open(
                new Opening.ToOpen(body.id, body.about, body.window, body.reason, body.holdsAll.orElse(false)),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/decisions")
    @RolesAllowed(Role.qualityEngineer)
    public Response decide(String code, Decided body) {
        return Receipt.of(deciding.decide(
                new Deciding.ToDecide(
                        body.id,
                        body.order,
                        code,
                        body.places,
                        body.disposition,
                        body.reason,
                        body.checked.orElse(Checked.NOTHING)),
                signedIn.actor()));
    }

    @POST
    @Path(ONE + "/closing")
    @RolesAllowed(Role.qualityEngineer)
    public Response close(String code, Close body) {
        Subject stream = look.known(code).opened().subject();
        return Receipt.of(closing.close(new Closing.ToClose(body.id, stream, code, body.reason), signedIn.actor()));
    }
}

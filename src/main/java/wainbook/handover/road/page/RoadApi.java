package wainbook.handover.road.page;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.handover.road.RoadDrive;
import wainbook.handover.road.RoadLook;
import wainbook.handover.road.RoadRelease;
import wainbook.handover.road.RoadRules;
import wainbook.ledger.Ledger;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.LineSaying.RoadReleased;
import wainbook.line.road.RoadUse;
import wainbook.order.Numbers;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** Releases for the road and drives, for scripts. */
@Path("/api/v1/orders/{order: [A-Za-z0-9][A-Za-z0-9._-]{0,39}}/road")
public class RoadApi {

    /**
     * How it stands.
     *
     * @param mayDrive whether it may be driven on the road now
     * @param fingerprint what a release must carry
     * @param disturbed what has disturbed the release in force
     * @param against what stands against a new release by whoever asks
     */
    public record Known(
            boolean mayDrive,
            String fingerprint,
            List<RoadReleased> releases,
            List<RoadDriven> drives,
            List<Problem.Ground> disturbed,
            List<Problem.Ground> against) {

        static Known of(RoadRules rules) {
            RoadUse use = rules.use();
            return new Known(
                    rules.mayDrive(),
                    rules.evidence().fingerprint(),
                    use.releases().stream().map(RoadUse.Release::said).toList(),
                    use.drives().stream().map(RoadUse.Drive::said).toList(),
                    rules.disturbed().stream().map(Problem.Ground::of).toList(),
                    rules.against().stream().map(Problem.Ground::of).toList());
        }
    }

    /** @param driver the number of the person who drives */
    public record Release(
            UUID id, String fingerprint, String driver, String plates, String insurance, String password) {}

    public record End(UUID id, Optional<String> reason) {}

    /** @param packsDegC the highest seen, in degrees Celsius; likewise {@code driveDegC} */
    public record Log(
            UUID id,
            String route,
            int loadKg,
            int fromKm,
            int toKm,
            Optional<BigDecimal> packsDegC,
            Optional<BigDecimal> driveDegC,
            Optional<BigDecimal> outsideDegC,
            Optional<String> faults,
            Optional<String> defects,
            boolean fit) {}

    private final Ledger ledger;
    private final RoadLook look;
    private final RoadRelease releasing;
    private final RoadDrive driving;
    private final SignedIn signedIn;

    RoadApi(Ledger ledger, RoadLook look, RoadRelease releasing, RoadDrive driving, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.releasing = releasing;
        this.driving = driving;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Known road(String order) {
        return look.at(ledger.history(Numbers.subject(order)), signedIn.now())
                .map(Known::of)
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("release")
    @RolesAllowed(Role.inspector)
    public Response release(String order, Release asked) {
        return Receipt.of(releasing.release(
                new RoadRelease.ToRelease(
                        asked.id(),
                        order,
                        asked.fingerprint(),
                        asked.driver(),
                        asked.plates(),
                        asked.insurance(),
                        asked.password()),
                signedIn.actor()));
    }

    @POST
    @Path("end")
    @Authenticated
    public Response end(String order, End asked) {
        return Receipt.of(releasing.end(
                new RoadRelease.ToEnd(asked.id(), order, asked.reason().orElse("")), signedIn.actor()));
    }

    @POST
    @Path("drives")
    @RolesAllowed({Role.technician, Role.teamLeader, Role.inspector, Role.handoverClerk, Role.lineManager})
    public Response log(String order, Log asked) {
        return Receipt.of(driving.log(
                new RoadDrive.ToLog(
                        asked.id(),
                        order,
                        asked.route(),
                        asked.loadKg(),
                        asked.fromKm(),
                        asked.toKm(),
                        asked.packsDegC(),
                        asked.driveDegC(),
                        asked.outsideDegC(),
                        asked.faults().orElse(""),
                        asked.defects().orElse(""),
                        asked.fit()),
                signedIn.actor()));
    }
}

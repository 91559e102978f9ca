package wainbook.order.specification;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestQuery;
import wainbook.engineering.specification.PackLife;
import wainbook.engineering.specification.PackRow;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.order.Numbers;
import wainbook.order.WorkOrder;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Chosen;
import wainbook.order.duty.Duty;
import wainbook.page.SignedIn;
import wainbook.page.api.Problem;
import wainbook.page.api.Receipt;
import wainbook.works.Role;

/** The specification of an order for scripts. */
@Path("/api/v1/orders/{order}/specification")
public class SpecificationApi {

    /**
     * As it stands.
     *
     * @param judged what an act about it must carry; {@code library} what a choice must carry besides
     * @param missing why there is no table
     */
    public record Known(
            long judged,
            int library,
            Optional<Duty> duty,
            Optional<ChassisFigures> chassis,
            List<Chosen> chosen,
            List<String> packTypes,
            List<Row> rows,
            List<Problem.Ground> missing) {}

    /** A number of packs. */
    public record Row(
            int packs,
            boolean feasible,
            double kwhPerKm,
            double rangeNewKm,
            double rangeAtEndKm,
            double rangeColdNewKm,
            double rangeColdAtEndKm,
            double oddsNew,
            double oddsAtEnd,
            double payloadLimitKg,
            String boundBy,
            List<Double> emptyKg,
            List<Double> ladenKg,
            double worstFrontKg,
            List<Double> liftedKg,
            Optional<Double> startsOn,
            Optional<Double> climbs,
            Optional<Double> chargeHours,
            Optional<Integer> lastYearMet,
            Optional<Integer> endOfLifeYear,
            List<Problem.Ground> ruledOut) {

        static Row of(SpecificationTable.Row row, Working working) {
            PackRow packs = row.packs();
            Optional<PackLife.Life> life = working.life().map(known -> known.of(packs));
            return new Row(
                    packs.packs(),
                    row.feasible(),
                    packs.kwhPerKm(),
                    packs.rangeNewKm(),
                    packs.rangeAtEndKm(),
                    packs.rangeColdNewKm(),
                    packs.rangeColdAtEndKm(),
                    packs.oddsNew(),
                    packs.oddsAtEnd(),
                    packs.payload().kg(),
                    packs.payload().binding().toString(),
                    row.emptyKg(),
                    row.ladenKg(),
                    row.worstFrontKg(),
                    row.liftedKg(),
                    grade(row.start()),
                    grade(row.climb()),
                    Optional.of(row.chargeHours()).filter(Double::isFinite),
                    life.flatMap(known -> year(known.lastMet())),
                    life.flatMap(known -> year(known.endsIn())),
                    row.ruledOut().stream()
                            .map(out -> RuledOutReasons.of(out, row, working))
                            .map(Problem.Ground::of)
                            .toList());
        }

        private static Optional<Integer> year(OptionalInt year) {
            return year.isPresent() ? Optional.of(year.getAsInt()) : Optional.empty();
        }

        private static Optional<Double> grade(SpecificationTable.Climb climb) {
            return climb.grade().isPresent() ? Optional.of(climb.grade().getAsDouble()) : Optional.empty();
        }
    }

    /** The day’s energy with its sums, which are those of the table. */
    public record Energy(DayEnergy day, double usualKwh, double worstKwh) {
        static Energy of(DayEnergy day) {
            return new Energy(day, day.usualKwh(), day.worstKwh());
        }
    }

    /** A duty stated. */
    public record ToState(UUID id, long judged, Duty duty) {}

    /** A vehicle stated. */
    public record ToStateVehicle(UUID id, long judged, ChassisFigures chassis) {}

    /** A number of packs chosen. */
    public record ToChoose(UUID id, long judged, int library, int packs, String packType) {}

    private final Ledger ledger;
    private final SpecificationLook look;
    private final Specifying specifying;
    private final SignedIn signedIn;

    SpecificationApi(Ledger ledger, SpecificationLook look, Specifying specifying, SignedIn signedIn) {
        this.ledger = ledger;
        this.look = look;
        this.specifying = specifying;
        this.signedIn = signedIn;
    }

    @GET
    @Authenticated
    public Known specification(String order, @RestQuery Optional<String> packs) {
        History history = ledger.history(Numbers.subject(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        Worked worked = look.worked(history, signedIn.now().at());
        List<String> types = worked.library().packTypes();
        Optional<Working> working = packs.or(() -> types.stream().findFirst()).flatMap(worked::working);
        Specification specification = worked.specification();
        return new Known(
                specification.seen(),
                worked.library().revision(),
                specification.duty().map(Specification.Said::what),
                specification.chassis().map(Specification.Said::what),
                specification.chosen().stream().map(Specification.Said::what).toList(),
                types,
                working.stream()
                        .flatMap(known -> known.table().rows().stream().map(row -> Row.of(row, known)))
                        .toList(),
                worked.missing().stream().map(Problem.Ground::of).toList());
    }

    /** Where the energy of the day goes, with so many packs. */
    @GET
    @Path("energy")
    @Authenticated
    public Energy energy(String order, @RestQuery int packs, @RestQuery Optional<String> packType) {
        History history = ledger.history(Numbers.subject(order));
        if (WorkOrder.of(history).isEmpty()) {
            throw new NotFoundException();
        }
        Worked worked = look.worked(history, signedIn.now().at());
        return packType.or(() -> worked.library().packTypes().stream().findFirst())
                .flatMap(worked::working)
                .filter(working -> packs >= 1 && packs <= working.places())
                .map(working -> Energy.of(DayEnergy.of(working, packs)))
                .orElseThrow(NotFoundException::new);
    }

    @POST
    @Path("duty")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response duty(String order, ToState body) {
        Numbers.subject(order);
        return Receipt.of(
                specifying.state(new Specifying.ToStateDuty(body.id, order, body.duty, body.judged), signedIn.actor()));
    }

    @POST
    @Path("vehicle")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response vehicle(String order, ToStateVehicle body) {
        Numbers.subject(order);
        return Receipt.of(specifying.state(
                new Specifying.ToStateChassis(body.id, order, body.chassis, body.judged), signedIn.actor()));
    }

    @POST
    @Path("choice")
    @RolesAllowed({Role.worksEngineer, Role.lineManager})
    public Response choose(String order, ToChoose body) {
        Numbers.subject(order);
        return Receipt.of(specifying.specify(
                new Specifying.ToSpecify(body.id, order, body.packs, body.packType, body.judged, body.library),
                signedIn.actor()));
    }
}

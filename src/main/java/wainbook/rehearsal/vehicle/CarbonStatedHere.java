package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.util.List;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonStating;
import wainbook.order.specification.Specification;
import wainbook.works.Role;

/** The works states what the conversion saves, where the operator makes a claim of it. Litres are invented. */
record CarbonStatedHere(AtVehicle at) {

    private static final BigDecimal USUAL_KWH_PER_KM = new BigDecimal("1.25");
    private static final BigDecimal USUAL_PACKS_KWH = new BigDecimal("262");

    void stated() {
        BigDecimal kwh = Specification.of(at.history())
                .standing()
                .map(said -> said.what().figures().kwhPerKm())
                .orElse(USUAL_KWH_PER_KM);
        BigDecimal litres = at.dice.figure(31, 38, 1);
        CarbonSets.Packs packs = CarbonSets.loaded().packs();
        var basis = new Basis(
                1_000 * at.dice.between(45, 70),
                8,
                List.of(litres.subtract(BigDecimal.valueOf(2)), litres, litres.add(BigDecimal.valueOf(2))),
                List.of(kwh.subtract(new BigDecimal("0.1")), kwh, kwh.add(new BigDecimal("0.2"))),
                List.of(BigDecimal.valueOf(88), BigDecimal.valueOf(90), BigDecimal.valueOf(93)),
                USUAL_PACKS_KWH,
                List.of(packs.low(), packs.mid(), packs.high()),
                BigDecimal.ZERO);
        at.pass(at.dice.between(1.0, 3.0));
        at.done(
                at.acts.carbon.state(
                        new CarbonStating.ToState(
                                at.dice.id(),
                                at.order,
                                basis,
                                CarbonSets.loaded().newestWhole().orElseThrow().year()),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "carbon statement");
    }
}

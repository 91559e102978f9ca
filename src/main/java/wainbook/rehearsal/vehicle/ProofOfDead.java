package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.util.List;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.proof.Scope;
import wainbook.isolation.step.Wanted;
import wainbook.process.plan.Plan;

/** Proves a vehicle dead at every point: the tester before and after, each point twice, a witness beside. */
record ProofOfDead(AtVehicle at, int station, String isolator, String witness) {

    private static final BigDecimal KNOWN_VOLT = new BigDecimal("240");

    void prove() {
        at.isolation().waitOverAt().ifPresent(at.clock::waitUntil);
        String tester = instrument("voltage-tester", plan().maximumVolt());
        String unit = instrument("proving-unit", KNOWN_VOLT);
        at.here.seen(tester, at.now());
        at.step(
                isolator,
                new Wanted.ProveTesterBefore(Scope.ALL_POINTS, tester, unit, KNOWN_VOLT, at.dice.figure(237, 243, 0)));
        List<String> points = at.isolation().points();
        for (String point : points) {
            at.here.seen(tester, at.now());
            at.step(isolator, new Wanted.MeasurePoint(point, tester, readings(point)));
        }
        at.pass(1);
        for (String point : points) {
            at.here.seen(tester, at.now());
            at.step(isolator, new Wanted.MeasurePointAgain(point, tester, readings(point)));
        }
        at.here.seen(tester, at.now());
        at.step(isolator, new Wanted.ProveTesterAfter(tester, unit, KNOWN_VOLT, at.dice.figure(237, 243, 0)));
        at.step(witness, new Wanted.WitnessProof());
    }

    private List<Reading> readings(String point) {
        return plan().point(point).orElseThrow().pairs().stream()
                .map(pair -> new Reading(pair, at.dice.figure(0.1, 0.6, 1)))
                .toList();
    }

    private String instrument(String kind, BigDecimal volt) {
        return AtVehicle.needed(at.tools.fit(kind, List.of(volt), at.now(), station), kind);
    }

    private Plan plan() {
        return AtVehicle.needed(
                at.acts.releases.plan(at.vehicle().ordered().variant()), "an isolation plan of the variant");
    }
}

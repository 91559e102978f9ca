package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.handover.road.RoadDrive;
import wainbook.handover.road.RoadRelease;
import wainbook.handover.road.RoadRules;
import wainbook.setup.DemoWorks;
import wainbook.works.Role;

/** A vehicle is released for the road and driven a round. */
record OnTheRoad(AtVehicle at) {

    private static final List<String> ROUNDS = List.of(
            "Quay gate, bypass to the quarry turn, back by the hill",
            "Quay gate, ring road twice, town centre in the noon traffic",
            "Quay gate, dual carriageway to the second junction and back");

    void released() {
        String inspector = AtVehicle.needed(
                at.crew.with(Role.INSPECTOR).stream()
                        .map(person -> person.number())
                        .filter(number -> rules(number).against().isEmpty())
                        .findFirst(),
                "the release of " + at.order + " for the road: "
                        + rules(at.crew.anyone(Role.INSPECTOR, at.dice)).against());
        RoadRules rules = rules(inspector);
        at.pass(at.dice.between(4.0, 9.0));
        at.done(
                at.acts.roadRelease.release(
                        new RoadRelease.ToRelease(
                                at.dice.id(),
                                at.order,
                                rules.evidence().fingerprint(),
                                driver(),
                                "Trade plates " + at.dice.digits(3),
                                "Cover " + at.dice.digits(6),
                                DemoWorks.PASSWORD),
                        at.inOffice(inspector)),
                "release for the road");
    }

    void driven() {
        RoadRules rules = rules(driver());
        int from = RoadDrive.odometerKm(rules, rules.use());
        at.pass(at.dice.between(50.0, 80.0));
        at.done(
                at.acts.roadDrive.log(
                        new RoadDrive.ToLog(
                                at.dice.id(),
                                at.order,
                                at.dice.one(ROUNDS),
                                500 * at.dice.between(0, 12),
                                from,
                                from + at.dice.between(28, 61),
                                Optional.of(BigDecimal.valueOf(at.dice.between(24, 33))),
                                Optional.of(BigDecimal.valueOf(at.dice.between(48, 71))),
                                Optional.of(BigDecimal.valueOf(at.dice.between(6, 17))),
                                "",
                                "",
                                true),
                        at.inOffice(driver())),
                "drive");
    }

    private String driver() {
        RoadRules any = rules(at.crew.anyone(Role.INSPECTOR, at.dice));
        return AtVehicle.needed(
                at.crew.with(Role.TECHNICIAN).stream()
                        .filter(person -> any.against(person).isEmpty())
                        .map(person -> person.number())
                        .findFirst(),
                "a drive on the road");
    }

    private RoadRules rules(String number) {
        return at.acts.roads.at(at.history(), Moment.of(number, at.now())).orElseThrow();
    }
}

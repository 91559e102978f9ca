package wainbook.rehearsal.vehicle;

import wainbook.order.duty.ChassisFigures;
import wainbook.order.specification.Specifying.ToSpecify;
import wainbook.order.specification.Specifying.ToStateChassis;
import wainbook.order.specification.Specifying.ToStateDuty;
import wainbook.order.specification.Worked;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.works.Role;

/** A works engineer states the duty with the order; when the survey has weighed the donor, the vehicle, and chooses. */
record Specified(AtVehicle at, Scenario.Asked asked) {

    void duty() {
        at.pass(3);
        at.done(
                at.acts.specifying.state(
                        new ToStateDuty(at.dice.id(), at.order, asked.duty(), judged()),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "duty");
    }

    void choice() {
        String engineer = at.crew.anyone(Role.WORKS_ENGINEER, at.dice);
        at.pass(5);
        at.done(
                at.acts.specifying.state(
                        new ToStateChassis(at.dice.id(), at.order, weighed(), judged()), at.inOffice(engineer)),
                "vehicle");
        at.pass(4);
        at.done(
                at.acts.specifying.specify(
                        new ToSpecify(
                                at.dice.id(),
                                at.order,
                                asked.packs(),
                                asked.packType(),
                                judged(),
                                worked().library().revision()),
                        at.inOffice(engineer)),
                "specification");
    }

    private Worked worked() {
        return at.acts.specifications.worked(at.history(), at.now());
    }

    private long judged() {
        return worked().specification().seen();
    }

    private ChassisFigures weighed() {
        ChassisFigures usual = asked.vehicle();
        return worked().received()
                .map(found -> new ChassisFigures(
                        usual.body(),
                        usual.market(),
                        usual.wheelbaseM(),
                        usual.secondFrontM(),
                        usual.secondRear(),
                        usual.twinAir(),
                        usual.otherEngine(),
                        usual.extraMassKg(),
                        new ChassisFigures.Received(
                                found.frontKg(),
                                found.rearKg(),
                                usual.received().uncertaintyKg(),
                                found.item()),
                        usual.plates(),
                        usual.steeringPercent(),
                        usual.places(),
                        usual.drive(),
                        usual.road(),
                        usual.store()))
                .orElse(usual);
    }
}

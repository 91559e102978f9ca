package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import wainbook.order.calibration.Asking;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.promise.Promising;
import wainbook.order.specification.Specifying.ToSpecify;
import wainbook.order.specification.Specifying.ToStateChassis;
import wainbook.order.specification.Specifying.ToStateDuty;
import wainbook.order.specification.Worked;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.works.Role;

/** A works engineer states the duty with the order; when the survey has weighed the donor, the vehicle, and chooses. */
record Specified(AtVehicle at, Scenario.Asked asked) {

    /** Standard uncertainty of an axle on scales of 20 kg steps. */
    private static final BigDecimal WEIGHED_KG = BigDecimal.valueOf(20);

    /** With the order the vehicle is stated too, by what such donors weigh: how many packs it needs is known before one is bought. */
    void duty() {
        at.pass(3);
        at.done(
                at.acts.specifying.state(
                        new ToStateDuty(at.dice.id(), at.order, asked.duty(), judged()),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "duty");
        vehicle(at.crew.anyone(Role.WORKS_ENGINEER, at.dice), asked.vehicle());
        asked.promises().forEach(this::promise);
        asked.calibration().ifPresent(this::driving);
    }

    private void driving(Scenario.Driving driving) {
        at.pass(2);
        at.done(
                at.acts.askingCalibration.ask(
                        new Asking.ToAsk(at.dice.id(), at.order, driving.wishes(), driving.sameTime(), 0),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "calibration");
    }

    private void promise(Scenario.Promised promised) {
        at.pass(1);
        at.done(
                at.acts.promising.promise(
                        new Promising.ToPromise(
                                at.dice.id(),
                                at.order,
                                promised.option(),
                                promised.items(),
                                promised.documents(),
                                promised.beforeHandover()),
                        at.inOffice(at.crew.anyone(Role.WORKS_ENGINEER, at.dice))),
                "promise");
    }

    private void vehicle(String engineer, ChassisFigures figures) {
        at.pass(5);
        at.done(
                at.acts.specifying.state(
                        new ToStateChassis(at.dice.id(), at.order, figures, judged()), at.inOffice(engineer)),
                "vehicle");
    }

    void choice() {
        String engineer = at.crew.anyone(Role.WORKS_ENGINEER, at.dice);
        vehicle(engineer, weighed());
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
                .map(found -> usual.weighing(
                        new ChassisFigures.Received(found.frontKg(), found.rearKg(), WEIGHED_KG, found.item())))
                .orElse(usual);
    }
}

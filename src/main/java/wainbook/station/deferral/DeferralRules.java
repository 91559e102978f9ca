package wainbook.station.deferral;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState.Status;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.deferral.Deferral.ToCarryOver;
import wainbook.station.deferral.Deferral.ToHandOn;
import wainbook.station.deferral.Deferral.ToReSequence;
import wainbook.station.work.Work;
import wainbook.works.Person;

/**
 * Whether an item may be given to a later stage. What stands against it whatever is typed, a page asks before it draws a
 * form; faults are in what was typed.
 */
public record DeferralRules(Work work) {

    public List<Reason> againstReSequencing() {
        List<Reason> against = againstAny();
        if (begun()) {
            against.add(Reason.of("station.begunAlready", Reason.WORKS_RULE, key()));
        }
        return against;
    }

    public List<Reason> againstCarryingOver() {
        List<Reason> against = againstAny();
        if (classA() || highVoltage()) {
            against.add(Reason.of("station.finishOrUndo", Reason.WORKS_RULE, key()));
        }
        if (work.state().entries().stream().anyMatch(entry -> entry.saying() instanceof CarriedOver)) {
            against.add(Reason.of("station.carriedOverOnce", Reason.WORKS_RULE, key()));
        }
        return against;
    }

    /** Only a second check that is due by a number of kilometres can be the operator's: it says by when. */
    public List<Reason> againstHandingOn() {
        var against = new ArrayList<Reason>();
        if (secondCheck().isEmpty()) {
            against.add(Reason.of("station.noSecondCheck", Reason.WORKS_RULE, key()));
        }
        Status status = work.state().status();
        if (status.settled() || status == Status.NONCONFORMING || status == Status.FAILED) {
            against.add(Reason.of("station.nothingToHandOn", Reason.WORKS_RULE, key()));
        }
        return against;
    }

    public Optional<Ask.Recheck> secondCheck() {
        return work.state().item().asks() instanceof Ask.Recheck asks
                        && asks.byKm().isPresent()
                ? Optional.of(asks)
                : Optional.empty();
    }

    List<Reason> faults(ToHandOn asked) {
        return asked.reason().isBlank()
                ? List.of(Reason.of("station.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"))
                : List.of();
    }

    List<Reason> faults(ToReSequence asked) {
        List<Reason> faults = faults(asked.toStage(), asked.reason());
        if (asked.bars().isEmpty()) {
            faults.add(Reason.of("station.barMissing", Reason.WORKS_RULE, key()).liftedAt("#bars"));
        } else if (highVoltage() && !asked.bars().contains(Bar.ENERGISING)) {
            faults.add(Reason.of("station.energisingBarMissing", Reason.WORKS_RULE, key())
                    .liftedAt("#bars"));
        }
        return faults;
    }

    List<Reason> faults(ToCarryOver asked, Person owner) {
        List<Reason> faults = faults(asked.toStage(), asked.reason());
        if (owner.left() || owner.roles().isEmpty()) {
            faults.add(Reason.of("station.ownerUnknown", Reason.WORKS_RULE, asked.owner())
                    .liftedAt("#owner"));
        }
        return faults;
    }

    /** The stages of the vehicle’s route that are still to come. */
    public List<String> laterStages() {
        List<String> stages = work.guards().order().ordered().stages();
        return stages.subList(stages.indexOf(work.stage()) + 1, stages.size());
    }

    public boolean highVoltage() {
        return work.state().item().condition() != Condition.NONE
                || work.guards().joint().filter(Joint::highVoltage).isPresent();
    }

    private List<Reason> againstAny() {
        var against = new ArrayList<Reason>();
        Status status = work.state().status();
        if (status.settled() || status == Status.NONCONFORMING) {
            against.add(Reason.of("station.nothingToDefer", Reason.WORKS_RULE, key()));
        }
        if (laterStages().isEmpty()) {
            against.add(Reason.of("station.noLaterStage", Reason.WORKS_RULE, key()));
        }
        return against;
    }

    private List<Reason> faults(String toStage, String reason) {
        var faults = new ArrayList<Reason>();
        if (!laterStages().isEmpty() && !laterStages().contains(toStage)) {
            faults.add(Reason.of("station.notALaterStage", Reason.WORKS_RULE, toStage)
                    .liftedAt("#toStage"));
        }
        if (reason.isBlank()) {
            faults.add(Reason.of("station.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        return faults;
    }

    private boolean begun() {
        return work.state().entries().stream()
                .map(entry -> entry.saying())
                .anyMatch(said -> said instanceof Result || said instanceof WaitBegun || said instanceof Observed);
    }

    private boolean classA() {
        return work.guards()
                .joint()
                .filter(joint -> joint.jointClass() == JointClass.A)
                .isPresent();
    }

    private String key() {
        return work.state().key();
    }
}

package wainbook.station;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.Condition;
import wainbook.process.Joint;
import wainbook.process.JointClass;
import wainbook.station.ItemState.Status;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.ReSequenced;

/** Gives an item to a later stage: re-sequenced when it was not begun, carried over when it was. */
@ApplicationScoped
public class Deferral {

    /** What is asked for an item not begun, such as one whose part is missing. */
    public record ToReSequence(UUID id, String order, String item, String toStage, List<Bar> bars, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReSequenced.class;
        }
    }

    /** What is asked for an item begun, or one that can wait without a bar. */
    public record ToCarryOver(UUID id, String order, String item, String toStage, String owner, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return CarriedOver.class;
        }
    }

    private final Ledger ledger;
    private final Workplace workplace;

    Deferral(Ledger ledger, Workplace workplace) {
        this.ledger = ledger;
        this.workplace = workplace;
    }

    public Outcome<Entry> reSequence(ToReSequence asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> workplace
                        .at(reading.of(order), reading.moment(), asked.item(), java.util.Optional.empty())
                        .fold(
                                work -> {
                                    List<Reason> against = common(work, asked.toStage(), asked.reason());
                                    if (!work.state().entries().isEmpty()) {
                                        against.add(Reason.of("station.begunAlready", Reason.WORKS_RULE, asked.item()));
                                    }
                                    if (asked.bars().isEmpty()) {
                                        against.add(Reason.of("station.barMissing", Reason.WORKS_RULE, asked.item()));
                                    }
                                    if (highVoltage(work) && !asked.bars().contains(Bar.ENERGISING)) {
                                        against.add(Reason.of(
                                                "station.energisingBarMissing", Reason.WORKS_RULE, asked.item()));
                                    }
                                    return against.isEmpty()
                                            ? Decision.say(
                                                    order,
                                                    new ReSequenced(
                                                            work.about(),
                                                            asked.toStage(),
                                                            asked.bars(),
                                                            asked.reason()))
                                            : Decision.refuse(against);
                                },
                                Decision::refuse));
    }

    public Outcome<Entry> carryOver(ToCarryOver asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> workplace
                        .at(reading.of(order), reading.moment(), asked.item(), java.util.Optional.empty())
                        .fold(
                                work -> {
                                    List<Reason> against = common(work, asked.toStage(), asked.reason());
                                    boolean classA = work.guards()
                                            .joint()
                                            .filter(joint -> joint.jointClass() == JointClass.A)
                                            .isPresent();
                                    if (classA || highVoltage(work)) {
                                        against.add(Reason.of("station.finishOrUndo", Reason.WORKS_RULE, asked.item()));
                                    }
                                    if (work.state().entries().stream()
                                            .anyMatch(entry -> entry.saying() instanceof CarriedOver)) {
                                        against.add(
                                                Reason.of("station.carriedOverOnce", Reason.WORKS_RULE, asked.item()));
                                    }
                                    return against.isEmpty()
                                            ? Decision.say(
                                                    order,
                                                    new CarriedOver(
                                                            work.about(),
                                                            asked.toStage(),
                                                            asked.owner(),
                                                            asked.reason()))
                                            : Decision.refuse(against);
                                },
                                Decision::refuse));
    }

    private static List<Reason> common(Work work, String toStage, String reason) {
        var against = new ArrayList<Reason>();
        List<String> stages = work.guards().order().ordered().stages();
        if (stages.indexOf(toStage) <= stages.indexOf(work.stage())) {
            against.add(Reason.of("station.notALaterStage", Reason.WORKS_RULE, toStage));
        }
        Status status = work.state().status();
        if (status.settled() || status == Status.NONCONFORMING) {
            against.add(Reason.of(
                    "station.nothingToDefer", Reason.WORKS_RULE, work.state().key()));
        }
        if (reason.isBlank()) {
            against.add(Reason.of("station.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        return against;
    }

    private static boolean highVoltage(Work work) {
        return work.state().item().condition() != Condition.NONE
                || work.guards().joint().filter(Joint::highVoltage).isPresent();
    }
}

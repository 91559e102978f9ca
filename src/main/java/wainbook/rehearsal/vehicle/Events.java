package wainbook.rehearsal.vehicle;

import java.util.List;
import java.util.Optional;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.awaited.Coming;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.nonconformity.Disposal;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.matter.nonconformity.Nonconformity;
import wainbook.matter.nonconformity.Reporting;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.hold.Holding;
import wainbook.permit.Permit;
import wainbook.permit.Permits;
import wainbook.permit.Permitting;
import wainbook.permit.Step;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.StationSaying.Help;
import wainbook.station.deferral.Deferral;
import wainbook.station.help.Calling;
import wainbook.station.help.HelpCall;
import wainbook.works.Role;

/** What happens at a vehicle beside the work: holds, reports and their decisions, work left for later, calls for help. */
public final class Events {

    /** Why the vehicle is held that a demonstration finds held. */
    public static final String NO_COUPLING = "Coupling not delivered, promised for this afternoon";

    /** What a demonstration finds missing. */
    public static final String STEERING_PUMP = "Steering pump, electric";

    private static final String NO_BRACKETS = "Bracket set not delivered to the station";
    private static final String CRACK = "Crack indication at a bracket, to be looked at";
    private static final String NO_FIT = "Bracket does not line up with the holes in the rail";
    private static final List<String> PLAYED_HOLDS = List.of(NO_COUPLING, NO_BRACKETS, CRACK);

    private final AtVehicle at;
    private final String stage;

    Events(AtVehicle at, String stage) {
        this.at = at;
        this.stage = stage;
    }

    void heldForAWhile() {
        at.pass(at.dice.between(1.0, 3.0));
        boolean parts = at.dice.falls(0.6);
        hold(parts ? HoldKind.PARTS : HoldKind.QUALITY, parts ? NO_BRACKETS : CRACK);
        at.pass(at.dice.between(4.0, 11.0));
        release(at.vehicle().holds().get(at.vehicle().holds().size() - 1));
    }

    private void release(Held held) {
        boolean parts = held.kindOfHold() == HoldKind.PARTS;
        Role releaser = parts ? Role.LINE_MANAGER : Role.QUALITY_ENGINEER;
        at.done(
                at.acts.holding.release(
                        new Holding.ToRelease(
                                at.dice.id(),
                                at.order,
                                held.hold(),
                                parts ? "Parts are at the station" : "Looked at with dye, no crack"),
                        at.as(at.crew.anyone(releaser, at.dice))),
                "release");
    }

    /** A part that was played as missing is there when its vehicle is; what people miss is theirs to note. */
    boolean partComes() {
        Optional<AwaitedPart> played = AwaitedParts.of(at.history()).openAt(Optional.of(stage)).stream()
                .filter(part -> part.what().equals(STEERING_PUMP))
                .findFirst();
        played.ifPresent(part -> at.done(
                at.acts.coming.note(
                        new Coming.ToNote(at.dice.id(), at.order, part.number(), "At the station"),
                        at.as(at.crew.anyone(Role.TEAM_LEADER, at.dice))),
                "part comes"));
        return played.isPresent();
    }

    /** Lets go of a hold that was played; one that people put on is theirs. */
    boolean letGo() {
        Optional<Held> played = at.vehicle().holds().stream()
                .filter(held -> PLAYED_HOLDS.contains(held.reason()))
                .findFirst();
        played.ifPresent(held -> {
            at.pass(at.dice.between(6.0, 18.0));
            release(held);
        });
        return played.isPresent();
    }

    /** Comes to a call that was played, and settles it; one that people made is theirs. */
    boolean comes() {
        Optional<HelpCall> played = HelpCall.open(at.history()).stream()
                .filter(call -> call.said().words().equals(Optional.of(NO_FIT)))
                .findFirst();
        played.ifPresent(call -> {
            String leader = at.crew.anyone(Role.TEAM_LEADER, at.dice);
            if (call.answered().isEmpty()) {
                at.pass(at.dice.between(1.5, 5.0));
                at.done(
                        at.acts.calling.answer(
                                new Calling.ToAnswer(at.dice.id(), at.order, call.number()), at.as(leader)),
                        "answer");
            }
            at.pass(at.dice.between(3.0, 9.0));
            at.done(
                    at.acts.calling.resolve(
                            new Calling.ToResolve(
                                    at.dice.id(), at.order, call.number(), Optional.of("Bracket changed, fits now")),
                            at.as(leader)),
                    "settle");
        });
        return played.isPresent();
    }

    /** Closes a permit under which work is over, once the last look for fire counts; whoever issued it does. */
    boolean closes() {
        Optional<Permit> over = Permits.of(at.history()).open().stream()
                .filter(permit -> permit.overAt().isPresent())
                .filter(permit -> permit.lastLookFrom()
                        .map(from -> !from.isAfter(at.now()))
                        .orElse(true))
                .findFirst();
        over.ifPresent(permit -> {
            at.pass(at.dice.between(2.0, 6.0));
            at.done(
                    at.acts.permitting.take(
                            new Permitting.ToTake(
                                    at.dice.id(),
                                    permit.subject(),
                                    permit.number(),
                                    Step.CLOSE,
                                    Optional.of("Looked at last, nothing warm or glowing")),
                            at.as(permit.issuer())),
                    "close permit");
        });
        return over.isPresent();
    }

    public void hold(HoldKind kind, String reason) {
        at.done(
                at.acts.holding.hold(
                        new Holding.ToHold(at.dice.id(), at.order, kind, List.of(Stops.WORK, Stops.MOVE), reason),
                        at.as(at.crew.anyone(Role.TEAM_LEADER, at.dice))),
                "hold");
    }

    void report(ItemState item) {
        at.pass(at.dice.between(1.0, 3.0));
        report(Optional.of(item.line().name()), at.dice.one(REPORTS));
        at.pass(at.dice.between(2.0, 6.0));
        dispose();
    }

    private static final List<String> REPORTS = List.of(
            "Paint damaged down to the metal beside the joint",
            "Cable chafes at the edge of the bracket",
            "Thread damaged, bolt does not run by hand",
            "Label missing",
            "Seal pinched");

    public void call() {
        at.pass(at.dice.between(1.0, 2.0));
        at.done(
                at.acts.calling.call(
                        new Calling.ToCall(at.dice.id(), at.order, Help.TEAM_LEADER, Optional.of(NO_FIT), false),
                        at.as(at.crew.anyone(Role.TECHNICIAN, at.dice))),
                "call help");
    }

    /** Leaves the first open item that may wait to the next stage. */
    public void leaveSomething() {
        at.record(stage).unsettled().stream()
                .filter(this::mayBeLeft)
                .findFirst()
                .ifPresent(this::carryOver);
    }

    private boolean mayBeLeft(ItemState item) {
        return item.item().condition() == Condition.NONE
                && item.item()
                        .joint()
                        .flatMap(at.acts.releases::joint)
                        .map(joint -> joint.jointClass() != JointClass.A)
                        .orElse(true);
    }

    public void report(Optional<String> item, String what) {
        at.done(
                at.acts.reporting.report(
                        new Reporting.ToReport(at.dice.id(), at.order, item, what),
                        at.as(at.crew.anyone(Role.TECHNICIAN, at.dice))),
                "report");
    }

    void dispose() {
        at.pass(at.dice.between(3.0, 9.0));
        for (Nonconformity open : Nonconformities.of(at.history()).awaitingDisposition()) {
            at.done(
                    at.acts.disposal.decide(
                            new Disposal.Dispose(
                                    at.dice.id(),
                                    at.order,
                                    open.number(),
                                    at.dice.falls(0.8) ? Disposition.REWORK : Disposition.REPAIR,
                                    "Put right with new parts, measured again",
                                    Optional.empty()),
                            at.as(at.crew.anyone(Role.QUALITY_ENGINEER, at.dice))),
                    "disposition");
        }
    }

    boolean mayBeCarriedOver(ItemState item) {
        List<String> stages = at.vehicle().ordered().stages();
        boolean light = item.item().condition() == Condition.NONE
                && item.item().asks() instanceof Ask.Confirm
                && item.item()
                        .joint()
                        .flatMap(at.acts.releases::joint)
                        .map(joint -> joint.jointClass() == JointClass.C)
                        .orElse(true);
        boolean others = at.record(stage).items().stream()
                .noneMatch(other -> other.item().after().contains(item.key()));
        return light && others && stages.indexOf(stage) >= 0 && stages.indexOf(stage) + 1 < stages.size();
    }

    void carryOver(ItemState item) {
        String next = at.vehicle().stageAfter(stage).orElseThrow();
        at.done(
                at.acts.deferral.carryOver(
                        new Deferral.ToCarryOver(
                                at.dice.id(),
                                at.order,
                                item.key(),
                                next,
                                at.crew.anyone(Role.TEAM_LEADER, at.dice),
                                "Clips short at the station, rest of the bracket done"),
                        at.as(at.crew.anyone(Role.TEAM_LEADER, at.dice))),
                "carry over " + item.key());
    }
}

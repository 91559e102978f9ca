package wainbook.rehearsal;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.isolation.step.FactsNow;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.Entry;
import wainbook.matter.Disposal;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.Nonconformities;
import wainbook.matter.Nonconformity;
import wainbook.matter.Reporting;
import wainbook.order.Holding;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.process.Ask;
import wainbook.process.CheckItem;
import wainbook.process.Condition;
import wainbook.process.Joint;
import wainbook.process.JointClass;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;
import wainbook.station.Calling;
import wainbook.station.Deferral;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;
import wainbook.station.Recording;
import wainbook.station.Reply;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.Help;
import wainbook.station.Voiding;
import wainbook.works.Role;

/** The work of one stage at one vehicle, item by item. */
final class StageWork {

    private static final int MOST_ENTRIES = 400;

    private final AtVehicle at;
    private final String stage;
    private final int station;
    private final Answers answers;
    private final Odds odds;
    private final double pace;
    private final Set<String> happened = new HashSet<>();
    private Optional<DeadWork> dead = Optional.empty();

    /** @param pace clock minutes for a planned minute of the people's time: several work at once */
    StageWork(AtVehicle at, String stage, int station, Answers answers, Odds odds, double pace) {
        this.at = at;
        this.stage = stage;
        this.station = station;
        this.answers = answers;
        this.odds = odds;
        this.pace = pace;
    }

    /** Works until this share of the items is settled; all of them at 1, and then the vehicle is restored. */
    void upTo(double share) {
        for (int i = 0; i < MOST_ENTRIES; i++) {
            StageRecord record = at.record(stage);
            Optional<ItemState> next = record.unsettled().stream()
                    .filter(item -> settledBefore(record, item))
                    .findFirst();
            if (next.isEmpty()
                    || record.settledCount() >= share * record.items().size()) {
                if (share >= 1) {
                    dead.ifPresent(DeadWork::restore);
                }
                return;
            }
            work(next.get());
        }
        throw new IllegalStateException(at.order + " does not come to an end at " + stage);
    }

    private static boolean settledBefore(StageRecord record, ItemState item) {
        return item.item().after().stream()
                .allMatch(before -> record.item(before)
                        .map(other -> other.status().settled())
                        .orElse(true));
    }

    private void work(ItemState item) {
        if (item.status() == Status.NONCONFORMING) {
            dispose();
            return;
        }
        if (item.status() == Status.FACTS_MISSING) {
            throw new IllegalStateException(at.order + " lacks the facts " + item.missingFacts());
        }
        if (once("held", item, odds.held() / 8)) {
            heldForAWhile();
        }
        if (mayBeCarriedOver(item) && once("carried", item, odds.carriedOver())) {
            carryOver(item);
            return;
        }
        if (once("reported", item, odds.reported())) {
            report(item);
        }
        Entry entry = record(item, once("outside", item, odds.outside()));
        if (once("voided", item, odds.voided())) {
            at.pass(at.dice.between(1.0, 4.0));
            at.done(
                    at.acts.voiding.voidEntry(
                            new Voiding.ToVoid(at.dice.id(), at.order, entry.id(), at.dice.one(VOID_REASONS)),
                            at.as(entry.moment().who())),
                    "void " + item.key());
        }
    }

    private static final List<String> VOID_REASONS = List.of(
            "Recorded at the wrong item", "Value typed wrong", "Read from the wrong scale", "Done again after a look");

    /** Each thing happens at most once to an item. */
    private boolean once(String what, ItemState item, double share) {
        return happened.add(what + item.line().name()) && at.dice.falls(share);
    }

    private Entry record(ItemState state, boolean bad) {
        CheckItem item = state.item();
        Optional<Joint> joint = item.joint().flatMap(at.acts.releases::joint);
        Optional<String> instrument = instrument(item, joint);
        String person = person(item, instrument);
        at.pass(item.plannedMinutes() * pace * at.dice.between(0.7, 1.3));
        Optional<Reply> wrong = bad ? answers.bad(item.asks(), joint) : Optional.empty();
        Reply reply = wrong.orElseGet(() -> answers.good(state.line().name(), item.asks(), joint));
        Entry entry = enter(state, person, instrument, reply);
        if (item.asks() instanceof Ask.Wait wait && state.status() != Status.WAITING) {
            at.clock.pass(Duration.ofMinutes(wait.minutes()));
            entry = enter(state, person, instrument, Reply.done());
        }
        if (item.condition() == Condition.TEST_UNDER_ISOLATION) {
            dead.orElseThrow().testOver();
        }
        if (item.condition() == Condition.LIVE) {
            dead.orElseThrow().liveOver(person);
        }
        return entry;
    }

    private Entry enter(ItemState state, String person, Optional<String> instrument, Reply reply) {
        return at.done(
                at.acts.recording.record(
                        new Recording.ToRecord(at.dice.id(), at.order, state.key(), instrument, reply), at.as(person)),
                state.line().name() + " " + reply);
    }

    private Optional<String> instrument(CheckItem item, Optional<Joint> joint) {
        if (item.asks() instanceof Ask.Measure measure) {
            return measure.instrumentKind()
                    .map(kind -> AtVehicle.needed(at.tools.fit(kind, List.of(), at.now(), station), kind));
        }
        return joint.filter(known -> item.asks() instanceof Ask.Tighten).map(known -> {
            List<BigDecimal> range = List.of(
                    known.torque().limitsNm().lower(), known.torque().limitsNm().upper());
            return AtVehicle.needed(at.tools.fit(known.toolKind(), range, at.now(), station), known);
        });
    }

    /** Who does it, with the vehicle in the electrical condition that the item asks for. */
    private String person(CheckItem item, Optional<String> instrument) {
        return switch (item.condition()) {
            case NONE -> worker(item);
            case NO_SOURCE_ABOARD -> {
                if (at.isolation().noSource().isEmpty()) {
                    String declarer = AtVehicle.needed(at.crew.authorised(2, at.now(), at.dice), "declaring no source");
                    at.step(declarer, new Wanted.DeclareNoSource(at.sources()));
                }
                yield worker(item);
            }
            case DEAD -> {
                dead().inForce(item.title(), landing(item));
                yield dead().receiver();
            }
            case TEST_UNDER_ISOLATION -> {
                dead().underTest(item.title(), instrument.orElseThrow());
                yield dead().tester();
            }
            case LIVE -> dead().live(item.title());
        };
    }

    private String worker(CheckItem item) {
        return AtVehicle.needed(
                at.crew.worker(station, item.competence(), 0, at.now(), at.dice), item.key() + " " + item.competence());
    }

    private DeadWork dead() {
        if (dead.isEmpty()) {
            String receiver = AtVehicle.needed(
                    at.crew.worker(station, Optional.of(FactsNow.COMPETENCE), 2, at.now(), at.dice), "dead work");
            dead = Optional.of(new DeadWork(at, station, receiver));
        }
        return dead.get();
    }

    private List<String> landing(CheckItem item) {
        Plan plan = at.acts.releases.plan(at.vehicle().ordered().variant()).orElseThrow();
        List<String> later = plan.later().stream().map(Source::code).toList();
        return item.parts().stream()
                .map(CheckItem.PartUse::part)
                .filter(later::contains)
                .toList();
    }

    private void heldForAWhile() {
        at.pass(at.dice.between(1.0, 3.0));
        boolean parts = at.dice.falls(0.6);
        hold(
                parts ? HoldKind.PARTS : HoldKind.QUALITY,
                parts ? "Bracket set not delivered to the station" : "Crack indication at a bracket, to be looked at");
        at.pass(at.dice.between(4.0, 11.0));
        int number = at.vehicle().holds().get(at.vehicle().holds().size() - 1).hold();
        Role releaser = parts ? Role.LINE_MANAGER : Role.QUALITY_ENGINEER;
        at.done(
                at.acts.holding.release(
                        new Holding.ToRelease(
                                at.dice.id(),
                                at.order,
                                number,
                                parts ? "Parts are at the station" : "Looked at with dye, no crack"),
                        at.as(at.crew.anyone(releaser, at.dice))),
                "release");
    }

    void hold(HoldKind kind, String reason) {
        at.done(
                at.acts.holding.hold(
                        new Holding.ToHold(at.dice.id(), at.order, kind, List.of(Stops.WORK, Stops.MOVE), reason),
                        at.as(at.crew.anyone(Role.TEAM_LEADER, at.dice))),
                "hold");
    }

    private void report(ItemState item) {
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

    void call() {
        at.pass(at.dice.between(1.0, 2.0));
        at.done(
                at.acts.calling.call(
                        new Calling.ToCall(
                                at.dice.id(),
                                at.order,
                                Help.TEAM_LEADER,
                                Optional.of("Bracket does not line up with the holes in the rail"),
                                false),
                        at.as(at.crew.anyone(Role.TECHNICIAN, at.dice))),
                "call help");
    }

    /** Leaves the first open item that may wait to the next stage. */
    void leaveSomething() {
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

    /** Leaves the vehicle so that it can be moved: isolated no more, or with every lock off. */
    void makeSafe() {
        dead.ifPresent(DeadWork::restore);
    }

    void report(Optional<String> item, String what) {
        at.done(
                at.acts.reporting.report(
                        new Reporting.ToReport(at.dice.id(), at.order, item, what),
                        at.as(at.crew.anyone(Role.TECHNICIAN, at.dice))),
                "report");
    }

    private void dispose() {
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

    private boolean mayBeCarriedOver(ItemState item) {
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

    private void carryOver(ItemState item) {
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

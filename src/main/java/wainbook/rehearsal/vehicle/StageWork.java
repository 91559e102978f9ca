package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.Entry;
import wainbook.process.determination.Method;
import wainbook.process.joint.Joint;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.chance.Odds;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;
import wainbook.station.Reply;
import wainbook.station.StageRecord;
import wainbook.station.determination.KnownResistor;
import wainbook.station.entry.Recording;
import wainbook.station.entry.Voiding;
import wainbook.station.tool.ToolNeeded;

/** The work of one stage at one vehicle, item by item. */
public final class StageWork {

    private static final int MOST_ENTRIES = 400;
    private static final double QUICKEST = 0.7;
    static final double SLOWEST = 1.3;

    /** Fasteners that are hardly ever all alike. */
    private static final int MANY = 6;

    private final AtVehicle at;
    private final String stage;
    private final int station;
    private final Answers answers;
    private final Odds odds;
    private final double pace;
    private final Events events;
    private final Set<String> happened = new HashSet<>();
    private Optional<DeadWork> dead = Optional.empty();
    private boolean alikeOnce;

    /** @param pace clock minutes for a planned minute of the people's time: several work at once */
    StageWork(AtVehicle at, String stage, int station, Answers answers, Odds odds, double pace) {
        this.at = at;
        this.stage = stage;
        this.station = station;
        this.answers = answers;
        this.odds = odds;
        this.pace = pace;
        this.events = new Events(at, stage);
    }

    /** The next joint of many fasteners comes out the same at each of them, as from no hand and no wrench. */
    public void readsAlikeOnce() {
        alikeOnce = true;
    }

    /** Works until this share of the items is settled; all of them at 1, and then the vehicle is restored. */
    public void upTo(double share) {
        upTo(share, Instant.MAX);
    }

    /** The same, and begins nothing that would not be done by a time. */
    public void upTo(double share, Instant end) {
        for (int i = 0; i < MOST_ENTRIES; i++) {
            StageRecord record = at.record(stage);
            if (record.settledCount() >= share * record.items().size() || !next(record, end)) {
                if (share >= 1) {
                    dead.ifPresent(DeadWork::restore);
                }
                return;
            }
        }
        throw new IllegalStateException(at.order + " does not come to an end at " + stage + ": "
                + at.record(stage).unsettled().stream()
                        .map(item -> item.key() + " " + item.status())
                        .toList());
    }

    /** Works on the next item; false if none is left that would be done by a time. */
    public boolean next(Instant end) {
        return next(at.record(stage), end);
    }

    private boolean next(StageRecord record, Instant end) {
        Optional<ItemState> next = record.unsettled().stream()
                .filter(item -> settledBefore(record, item))
                .findFirst()
                .filter(item -> !Foreseen.doneBy(item.item(), pace, dead.isPresent(), at.now())
                        .isAfter(end));
        next.ifPresent(this::work);
        return next.isPresent();
    }

    private static boolean settledBefore(StageRecord record, ItemState item) {
        return item.item().after().stream()
                .allMatch(before -> record.item(before)
                        .map(other -> other.status().settled())
                        .orElse(true));
    }

    private void work(ItemState item) {
        if (item.status() == Status.NONCONFORMING) {
            events.dispose();
            return;
        }
        if (item.status() == Status.FACTS_MISSING) {
            throw new IllegalStateException(at.order + " lacks the facts " + item.missingFacts());
        }
        if (once("held", item, odds.held() / 8)) {
            events.heldForAWhile();
        }
        if (events.mayBeCarriedOver(item) && once("carried", item, odds.carriedOver())) {
            events.carryOver(item);
            return;
        }
        if (once("reported", item, odds.reported())) {
            events.report(item);
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
        at.pass(item.plannedMinutes() * pace * at.dice.between(QUICKEST, SLOWEST));
        Optional<Reply> wrong = bad ? answers.bad(item.asks(), joint) : Optional.empty();
        Reply reply = wrong.orElseGet(() -> alike(answers.good(state.line().name(), item.asks(), joint)));
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

    private Reply alike(Reply reply) {
        int bolts = reply.boltsNm().size();
        if (!alikeOnce || bolts < MANY || !reply.anglesDeg().isEmpty()) {
            return reply;
        }
        alikeOnce = false;
        return Reply.with()
                .boltsNm(Collections.nCopies(bolts, reply.boltsNm().get(0)))
                .build();
    }

    private Entry enter(ItemState state, String person, Optional<String> instrument, Reply answered) {
        Reply reply = named(state, person, answered);
        arrives(person);
        instrument.ifPresent(this::arrives);
        at.here.seen(person, at.now());
        instrument.ifPresent(code -> at.here.seen(code, at.now()));
        if (state.item().asks() instanceof Ask.Serial serial) {
            reply.serial()
                    .ifPresent(
                            number -> new PackStore(at.acts, at.crew, at.tools).fetch(serial.part(), number, at.now()));
        }
        return at.done(
                at.acts.recording.record(
                        new Recording.ToRecord(at.dice.id(), at.order, state.key(), instrument, reply), at.as(person)),
                state.line().name() + " " + reply);
    }

    /** Looked at again after each wait: others go about meanwhile. */
    private void arrives(String code) {
        for (Instant there = at.here.here(code, at.now());
                there.isAfter(at.now());
                there = at.here.here(code, at.now())) {
            at.clock.waitUntil(there);
        }
    }

    /** Whom and what the entry names besides: who stood by and where, and the known resistor. */
    private Reply named(ItemState state, String person, Reply answered) {
        if (state.item().asks() instanceof Ask.Attended) {
            Dice dice = Dice.of(0, "second", at.order, state.key());
            String second = at.isolation()
                    .live()
                    .map(LivePermit::second)
                    .or(() -> at.crew.authorised(2, at.now(), dice, person))
                    .orElseThrow();
            return answered.and("place", at.vehicle().at().orElseThrow().place())
                    .and("second", second);
        }
        if (state.item().asks() instanceof Ask.Determine ask && ask.method() == Method.ISOLATION_VOLTMETER) {
            return ask.given().stream()
                    .filter(given -> given.name().equals("insertedOhm"))
                    .flatMap(given -> given.value().stream())
                    .flatMap(ohm -> at
                            .tools
                            .fit(KnownResistor.KIND, List.of(ohm.divide(BigDecimal.valueOf(1000))), at.now(), station)
                            .stream())
                    .findFirst()
                    .map(code -> answered.and("resistor", code))
                    .orElse(answered);
        }
        return answered;
    }

    private Optional<String> instrument(CheckItem item, Optional<Joint> joint) {
        return ToolNeeded.of(item.asks(), joint)
                .map(needed -> AtVehicle.needed(
                        at.tools.fit(needed.kind(), needed.values(), at.now(), station),
                        item.key() + " " + needed.kind()));
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
                dead().inForce(workOfStage(), landing(item));
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
                at.crew.worker(station, item.competence(), at.now(), at.dice), item.key() + " " + item.competence());
    }

    /** A permit is for all the dead work of a stage, not for one item. */
    private String workOfStage() {
        return at.acts.releases.stage(stage).orElseThrow().title() + ", by its check sheet";
    }

    private DeadWork dead() {
        if (dead.isEmpty()) {
            dead = Optional.of(DeadWork.begun(at, station));
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

    /** Leaves the vehicle so that it can be moved: isolated no more, or with every lock off. */
    public void makeSafe() {
        if (dead.isPresent() || DeadWork.isUnderWay(at)) {
            dead().restore();
        }
    }

    /** What else happens at the vehicle. */
    public Events events() {
        return events;
    }
}

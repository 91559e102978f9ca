package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.scenario.Evidence;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.waste.ContainerRow;
import wainbook.waste.Said;
import wainbook.waste.Thing;
import wainbook.waste.act.Closing;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.EngineFate;
import wainbook.waste.act.PuttingIn;
import wainbook.works.Role;

/**
 * What was stripped goes into containers, vehicle after vehicle as they were stripped; full ones are sealed, and some are collected. Its
 * dice are its own: nothing else falls otherwise.
 */
final class WasteScene {

    static final String STAGE = "strip";

    /** First label of the containers that vehicles on the line fill. */
    static final int ON_THE_LINE = 101;

    private static final Duration BETWEEN = Duration.ofSeconds(12);

    /** Days after which this works asks about a container. */
    private static final int USUAL = 90;

    private static final int SOON = 10;

    private final Playing playing;
    private final WasteYard yard;

    /** @param first number of its labels; each scene has a hundred of its own */
    WasteScene(Playing playing, int first) {
        this.playing = playing;
        this.yard = new WasteYard(playing, first);
    }

    /** A drum for filters that was begun before the others, and stands longer than the works wants. */
    void begun(Duration before) {
        playing.together(() -> {
            if (yard.ours().isEmpty()) {
                Dice dice = yard.dice("begun");
                Actor actor =
                        yard.actor(Role.TECHNICIAN, dice, Clock.fixed(playing.present.minus(before), ZoneOffset.UTC));
                yard.opened(ListOfWaste.ours().find(WasteYard.FILTERS).orElseThrow(), SOON, dice, actor);
            }
        });
    }

    WasteLeaving leaving() {
        return new WasteLeaving(yard);
    }

    /** Right after the vehicle was stripped, in its own time; once. */
    void placed(String order, boolean coreIsLate) {
        playing.together(() -> {
            History history = history(order);
            if (history.isEmpty() || !Said.of(history).byThing().isEmpty()) {
                return;
            }
            Dice dice = Dice.of(playing.scenario.seed(), "waste", order);
            var clock = new PlayedClock(last(history));
            Actor actor = yard.actor(Role.TECHNICIAN, dice, clock);
            noted(order, coreIsLate, dice, clock, actor);
            for (Thing thing : playing.acts.takenOut.of(history(order))) {
                clock.pass(BETWEEN);
                goes(order, thing, dice, actor);
            }
            engine(order, dice, actor, clock);
        });
    }

    private void noted(String order, boolean coreIsLate, Dice dice, PlayedClock clock, Actor actor) {
        clock.pass(BETWEEN);
        WasteYard.done(playing.acts.decidingParts.note(
                new Deciding.ToNote(
                        dice.id(),
                        order,
                        "Oil and fuel filters",
                        WasteYard.FILTERS,
                        dice.figure(4, 8, 1),
                        Fate.RECYCLE),
                actor));
        clock.pass(BETWEEN);
        WasteYard.done(playing.acts.decidingParts.note(
                new Deciding.ToNote(
                        dice.id(), order, "Old steering pump", "16 01 22", dice.figure(7, 10, 1), Fate.CORE),
                actor));
        String thing = "n2";
        LocalDate due = playing.acts.day.of(clock.instant()).plusDays(coreIsLate ? 1 : 30);
        clock.pass(BETWEEN);
        WasteYard.done(playing.acts.decidingParts.decide(
                new Deciding.ToDecide(
                        dice.id(),
                        order,
                        thing,
                        Fate.CORE,
                        Optional.of("Supplier SP-02"),
                        Optional.of(due),
                        Optional.of("Returns rack " + dice.between(1, 4)),
                        "Core for the exchange pump"),
                actor));
    }

    private void goes(String order, Thing thing, Dice dice, Actor actor) {
        if (thing.fate().waste()) {
            put(order, thing, dice, actor);
        } else if (thing.fate().stays()) {
            decided(order, thing, dice, actor, Optional.empty(), Optional.of("Fuel store, tank " + dice.between(1, 2)));
        } else if (thing.said().decided().isEmpty()) {
            decided(
                    order,
                    thing,
                    dice,
                    actor,
                    Optional.of("Dealer DL-0" + dice.between(1, 3)),
                    Optional.of("Yard, pallet " + dice.between(1, 9)));
        }
    }

    private void decided(
            String order, Thing thing, Dice dice, Actor actor, Optional<String> party, Optional<String> place) {
        WasteYard.done(playing.acts.decidingParts.decide(
                new Deciding.ToDecide(
                        dice.id(),
                        order,
                        thing.key(),
                        thing.fate(),
                        party,
                        party.map(some -> playing.acts.day.of(playing.present).plusDays(21)),
                        place,
                        ""),
                actor));
        if (thing.fate() == Fate.REUSE && dice.falls(0.6)) {
            WasteYard.done(playing.acts.decidingParts.test(
                    new Deciding.ToTest(dice.id(), order, thing.key(), true, "Clear and free of water in the glass"),
                    actor));
        }
    }

    /** Into the first that has room; one that has none is sealed, and another opened. */
    private void put(String order, Thing thing, Dice dice, Actor actor) {
        for (ContainerRow row : yard.open(thing.row().code())) {
            if (playing.acts
                    .puttingIn
                    .put(new PuttingIn.ToPut(dice.id(), row.label, order, thing.key()), actor)
                    .reasons()
                    .isEmpty()) {
                return;
            }
            WasteYard.done(playing.acts.closing.seal(new Closing.ToSeal(dice.id(), row.label), actor));
        }
        String label = yard.opened(thing.row(), USUAL, dice, actor);
        WasteYard.done(playing.acts.puttingIn.put(new PuttingIn.ToPut(dice.id(), label, order, thing.key()), actor));
    }

    private void engine(String order, Dice dice, Actor actor, PlayedClock clock) {
        History history = history(order);
        if (!playing.acts.engineFate.against(history).isEmpty()) {
            return;
        }
        clock.pass(BETWEEN);
        var evidence = new Evidence(playing.acts.files);
        WasteYard.done(playing.acts.engineFate.record(
                new EngineFate.ToRecord(
                        dice.id(),
                        order,
                        "EN-" + dice.digits(7),
                        "Hole of 90 mm cut through the block into the second cylinder",
                        playing.acts.day.of(clock.instant()),
                        evidence.of("image/jpeg"),
                        evidence.of("image/png"),
                        Optional.of("T-" + dice.digits(5)),
                        Optional.empty()),
                actor));
    }

    private History history(String order) {
        return playing.acts.ledger.history(Subject.workOrder(order));
    }

    private static Instant last(History history) {
        List<Entry> entries = history.entries();
        return entries.get(entries.size() - 1).moment().at();
    }
}

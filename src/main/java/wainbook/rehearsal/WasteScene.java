package wainbook.rehearsal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Actor;
import wainbook.act.Outcome;
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
import wainbook.waste.WasteSaying.Assessment;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.act.Closing;
import wainbook.waste.act.Collecting;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.EngineFate;
import wainbook.waste.act.Opening;
import wainbook.waste.act.PuttingIn;
import wainbook.waste.act.Returning;
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
    private static final int SERIES = 100;

    /** Days after which this works asks about a container. */
    private static final int USUAL = 90;

    private static final int SOON = 10;
    private static final String FILTERS = "16 01 07*";
    private static final String COOLANT = "16 01 14*";

    /** Drums, boxes and skips of this invented works. */
    private record Vessel(String capacity, Measure measure, String place, String packing) {}

    private static final Vessel SKIP = new Vessel("3000", Measure.KG, "Waste yard, skip bay", "1 open skip, 6 m³");

    private static final Map<String, Vessel> VESSELS = Map.of(
            "16 06 01*",
            new Vessel("600", Measure.KG, "Waste yard, battery bay", "1 acid-proof box, 600 kg"),
            "13 02 05*",
            new Vessel("1000", Measure.L, "Waste yard, oil bund", "1 bunded tank, 1000 l"),
            "13 01 10*",
            new Vessel("200", Measure.L, "Waste yard, oil bund", "1 steel drum, 200 l"),
            COOLANT,
            new Vessel("200", Measure.L, "Waste yard, drum bund", "1 plastic drum, 200 l"),
            "16 10 02",
            new Vessel("1000", Measure.L, "Waste yard, drum bund", "1 plastic container, 1000 l"),
            "14 06 01*",
            new Vessel("40", Measure.KG, "Gas cage", "recovery cylinders"),
            FILTERS,
            new Vessel("120", Measure.KG, "Waste yard, drum bund", "1 steel drum with lid, 200 l"),
            "16 01 21*",
            new Vessel("1200", Measure.KG, "Waste yard, covered bay", "1 covered skip"));

    private final Playing playing;
    private final int first;

    /** @param first number of its labels; each scene has a hundred of its own */
    WasteScene(Playing playing, int first) {
        this.playing = playing;
        this.first = first;
    }

    /** A drum for filters that was begun before the others, and stands longer than the works wants. */
    void begun(Duration before) {
        playing.together(() -> {
            if (ours().isEmpty()) {
                Dice dice = Dice.of(playing.scenario.seed(), "begun", first);
                Actor actor = actor(Role.TECHNICIAN, dice, Clock.fixed(playing.present.minus(before), ZoneOffset.UTC));
                opened(ListOfWaste.ours().find(FILTERS).orElseThrow(), SOON, dice, actor);
            }
        });
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
            Actor actor = actor(Role.TECHNICIAN, dice, clock);
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
        done(playing.acts.decidingParts.note(
                new Deciding.ToNote(
                        dice.id(), order, "Oil and fuel filters", FILTERS, dice.figure(4, 8, 1), Fate.RECYCLE),
                actor));
        clock.pass(BETWEEN);
        done(playing.acts.decidingParts.note(
                new Deciding.ToNote(
                        dice.id(), order, "Old steering pump", "16 01 22", dice.figure(7, 10, 1), Fate.CORE),
                actor));
        String thing = "n2";
        LocalDate due = playing.acts.day.of(clock.instant()).plusDays(coreIsLate ? 1 : 30);
        clock.pass(BETWEEN);
        done(playing.acts.decidingParts.decide(
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
        done(playing.acts.decidingParts.decide(
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
            done(playing.acts.decidingParts.test(
                    new Deciding.ToTest(dice.id(), order, thing.key(), true, "Clear and free of water in the glass"),
                    actor));
        }
    }

    /** Into the first that has room; one that has none is sealed, and another opened. */
    private void put(String order, Thing thing, Dice dice, Actor actor) {
        for (ContainerRow row : open(thing.row().code())) {
            if (playing.acts
                    .puttingIn
                    .put(new PuttingIn.ToPut(dice.id(), row.label, order, thing.key()), actor)
                    .reasons()
                    .isEmpty()) {
                return;
            }
            done(playing.acts.closing.seal(new Closing.ToSeal(dice.id(), row.label), actor));
        }
        String label = opened(thing.row(), USUAL, dice, actor);
        done(playing.acts.puttingIn.put(new PuttingIn.ToPut(dice.id(), label, order, thing.key()), actor));
    }

    private String opened(ListOfWaste.Row row, int askAfterDays, Dice dice, Actor actor) {
        String label = labelled() + String.format("%04d", first + ours().size());
        Vessel vessel = VESSELS.getOrDefault(row.code(), SKIP);
        done(playing.acts.openingContainers.open(
                new Opening.ToOpen(
                        dice.id(),
                        label,
                        row.code(),
                        new BigDecimal(vessel.capacity()),
                        vessel.measure(),
                        vessel.place(),
                        true,
                        true,
                        row.twin()
                                .map(twin ->
                                        new Assessment("Adviser AD-01", "Safety data sheets, assessment of March")),
                        askAfterDays),
                actor));
        return label;
    }

    private void engine(String order, Dice dice, Actor actor, PlayedClock clock) {
        History history = history(order);
        if (!playing.acts.engineFate.against(history).isEmpty()) {
            return;
        }
        clock.pass(BETWEEN);
        var evidence = new Evidence(playing.acts.files);
        done(playing.acts.engineFate.record(
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

    /** What is sealed leaves so long before the present; a weighbridge weighs the coolant. */
    void collected(Duration before, boolean everything) {
        playing.together(() -> {
            Dice dice = Dice.of(playing.scenario.seed(), "collected", first);
            for (ContainerRow row : ours()) {
                boolean leaves = everything ? !row.code.equals(FILTERS) : row.isSealed;
                if (row.collectedAt == null && leaves) {
                    collected(row, dice, playing.present.minus(before));
                }
            }
        });
    }

    private void collected(ContainerRow row, Dice dice, Instant when) {
        Actor actor = actor(Role.HANDOVER_CLERK, dice, Clock.fixed(when, ZoneOffset.UTC));
        LocalDate today = playing.acts.day.of(when);
        boolean weighed = row.code.equals(COOLANT);
        done(playing.acts.collecting.collect(
                new Collecting.ToCollect(
                        dice.id(),
                        row.label,
                        Optional.empty(),
                        (row.hazardous ? "WAINWO/" : "T-") + letter() + String.format("%04d", number(row)),
                        "The works, Line Road 1, waste yard",
                        "29.20",
                        "Dismantling and conversion of vehicles",
                        row.hazardous ? "As the safety data sheets in the works’ folder say" : "",
                        row.hazardous ? "HP 14" : "",
                        VESSELS.getOrDefault(row.code, SKIP).packing(),
                        "",
                        weighed
                                ? Optional.of(row.massKg
                                        .multiply(new BigDecimal("1.012"))
                                        .setScale(0, RoundingMode.UP))
                                : Optional.empty(),
                        weighed ? Optional.of("W-" + dice.digits(5)) : Optional.empty(),
                        "Carrier CR-03, Quarry Lane 8",
                        "CR-REG-0417",
                        today,
                        "ZZ21 WST",
                        "Treatment site TS-02, Dock Road 30",
                        "TS-PERMIT-118",
                        today),
                actor));
    }

    /** What the site reports of those that left: most of it recycled. */
    void returned(Duration before) {
        playing.together(() -> {
            Dice dice = Dice.of(playing.scenario.seed(), "returned", first);
            Instant when = playing.present.minus(before);
            Actor actor = actor(Role.HANDOVER_CLERK, dice, Clock.fixed(when, ZoneOffset.UTC));
            for (ContainerRow row : ours()) {
                if (row.collectedAt != null && !row.isReturned) {
                    BigDecimal energy =
                            row.noteKg.multiply(new BigDecimal("0.08")).setScale(1, RoundingMode.DOWN);
                    BigDecimal lost =
                            row.noteKg.multiply(new BigDecimal("0.05")).setScale(1, RoundingMode.DOWN);
                    done(playing.acts.returning.note(
                            new Returning.ToReturn(
                                    dice.id(),
                                    row.label,
                                    playing.acts.day.of(when),
                                    "Return " + dice.digits(4),
                                    row.noteKg.subtract(energy).subtract(lost),
                                    energy,
                                    lost),
                            actor));
                }
            }
        });
    }

    private List<ContainerRow> open(String code) {
        return ContainerRow.openFor(code).stream().filter(this::isOurs).toList();
    }

    private List<ContainerRow> ours() {
        return ContainerRow.all().stream().filter(this::isOurs).toList();
    }

    private boolean isOurs(ContainerRow row) {
        return row.label.matches(labelled() + "\\d{4}") && number(row) >= first && number(row) < first + SERIES;
    }

    private int number(ContainerRow row) {
        return Integer.parseInt(row.label.substring(labelled().length()));
    }

    /** What its labels begin with: the demo's own simply with a C. */
    private String labelled() {
        return playing.numbers().equals(Rehearsal.NUMBERS) ? "C-" : "C-" + playing.numbers();
    }

    /** The letter of its notes, of which no two pasts may have the same number. */
    private char letter() {
        return (char) ('A' + Math.floorMod(labelled().hashCode() - "C-".hashCode(), 26));
    }

    private Actor actor(Role role, Dice dice, Clock clock) {
        return Actor.of(playing.crew(playing.at("waste yard")).anyone(role, dice), clock);
    }

    private History history(String order) {
        return playing.acts.ledger.history(Subject.workOrder(order));
    }

    private static Instant last(History history) {
        List<Entry> entries = history.entries();
        return entries.get(entries.size() - 1).moment().at();
    }

    private static <T> void done(Outcome<T> outcome) {
        outcome.reasons().stream().findFirst().ifPresent(reason -> {
            throw new IllegalStateException("waste: " + reason + " is refused");
        });
    }
}

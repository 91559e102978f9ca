package wainbook.rehearsal;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.process.stream.ListOfWaste;
import wainbook.rehearsal.chance.Dice;
import wainbook.waste.ContainerRow;
import wainbook.waste.WasteSaying.Assessment;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.act.Opening;
import wainbook.works.Role;

/** The containers of one scene and who is at them: each scene has a hundred labels of its own. */
final class WasteYard {

    static final String FILTERS = "16 01 07*";
    static final String COOLANT = "16 01 14*";
    private static final int SERIES = 100;

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

    final Playing playing;
    private final int first;

    WasteYard(Playing playing, int first) {
        this.playing = playing;
        this.first = first;
    }

    Dice dice(String what) {
        return Dice.of(playing.scenario.seed(), what, first);
    }

    String opened(ListOfWaste.Row row, int askAfterDays, Dice dice, Actor actor) {
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

    String packing(String code) {
        return VESSELS.getOrDefault(code, SKIP).packing();
    }

    List<ContainerRow> open(String code) {
        return ContainerRow.openFor(code).stream().filter(this::isOurs).toList();
    }

    List<ContainerRow> ours() {
        return ContainerRow.all().stream().filter(this::isOurs).toList();
    }

    private boolean isOurs(ContainerRow row) {
        return row.label.matches(labelled() + "\\d{4}") && number(row) >= first && number(row) < first + SERIES;
    }

    int number(ContainerRow row) {
        return Integer.parseInt(row.label.substring(labelled().length()));
    }

    /** What its labels begin with: the demo's own simply with a C. */
    private String labelled() {
        return playing.numbers().equals(Rehearsal.NUMBERS) ? "C-" : "C-" + playing.numbers();
    }

    /** The letter of its notes, of which no two pasts may have the same number. */
    char letter() {
        return (char) ('A' + Math.floorMod(labelled().hashCode() - "C-".hashCode(), 26));
    }

    Actor actor(Role role, Dice dice, Clock clock) {
        return Actor.of(playing.crew(playing.at("waste yard")).anyone(role, dice), clock);
    }

    static <T> void done(Outcome<T> outcome) {
        outcome.reasons().stream().findFirst().ifPresent(reason -> {
            throw new IllegalStateException("waste: " + reason + " is refused");
        });
    }
}

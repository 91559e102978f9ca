package wainbook.waste.rate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Container;
import wainbook.waste.Thing;
import wainbook.waste.WasteSaying.ReturnNoted;
import wainbook.waste.rate.Recovery.Part;

/**
 * What became of a vehicle's things, twice: in the form of ISO 22628, where by convention all that is drained counts as recovered; and
 * by what is known to have happened, where only a part that stays in use or a return from a site counts.
 *
 * @param containers those that hold any of them, by label
 */
public record Rates(List<Thing> things, Map<String, Container> containers) {

    private static final int GRAMS = 3;

    public Recovery byIso() {
        return new Recovery(things.stream().map(this::byIso).toList());
    }

    public Recovery byNotes() {
        return new Recovery(things.stream().map(this::byNotes).toList());
    }

    private Part byIso(Thing thing) {
        BigDecimal mass = thing.countedKg();
        if (!thing.fate().waste()) {
            return part(mass, ListOfWaste.Group.DISMANTLED, mass, BigDecimal.ZERO);
        }
        ListOfWaste.Group group = thing.row().group();
        if (group == ListOfWaste.Group.PRE_TREATMENT) {
            return part(mass, group, mass, BigDecimal.ZERO);
        }
        return back(thing).isEmpty()
                ? part(mass, group, thing.fate() == Fate.DISPOSE ? BigDecimal.ZERO : mass, BigDecimal.ZERO)
                : part(mass, group, share(thing, ReturnKind.RECYCLED), share(thing, ReturnKind.ENERGY));
    }

    private Part byNotes(Thing thing) {
        BigDecimal mass = thing.countedKg();
        if (!thing.fate().waste()) {
            return part(mass, ListOfWaste.Group.DISMANTLED, mass, BigDecimal.ZERO);
        }
        return part(mass, ListOfWaste.Group.METALS, share(thing, ReturnKind.RECYCLED), share(thing, ReturnKind.ENERGY));
    }

    private enum ReturnKind {
        RECYCLED,
        ENERGY;

        BigDecimal of(ReturnNoted said) {
            return this == RECYCLED ? said.recycledKg() : said.energyKg();
        }
    }

    private Optional<ReturnNoted> back(Thing thing) {
        return thing.container().map(containers::get).flatMap(Container::returned);
    }

    /** What of its own mass went that way, in the proportions of the whole container; rounded down, so that no rate gains by it. */
    private BigDecimal share(Thing thing, ReturnKind kind) {
        return back(thing)
                .map(said -> {
                    BigDecimal whole = said.recycledKg().add(said.energyKg()).add(said.disposedKg());
                    return whole.signum() == 0
                            ? BigDecimal.ZERO
                            : thing.countedKg().multiply(kind.of(said)).divide(whole, GRAMS, RoundingMode.DOWN);
                })
                .orElse(BigDecimal.ZERO);
    }

    /** Waste of which nobody has said yet what became of it. */
    public BigDecimal unknownKg() {
        return things.stream()
                .filter(thing -> thing.fate().waste() && back(thing).isEmpty())
                .map(Thing::countedKg)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Part part(BigDecimal mass, ListOfWaste.Group group, BigDecimal recycled, BigDecimal energy) {
        BigDecimal none = BigDecimal.ZERO;
        return switch (group) {
            case PRE_TREATMENT -> new Part(mass, recycled, none, none, none, energy);
            case DISMANTLED -> new Part(mass, none, recycled, none, none, energy);
            case METALS -> new Part(mass, none, none, recycled, none, energy);
            case REST -> new Part(mass, none, none, none, recycled, energy);
        };
    }
}

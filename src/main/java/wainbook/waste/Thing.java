package wainbook.waste;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.process.stream.Density;
import wainbook.process.stream.Fate;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.Said.OfThing;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.Tested;

/**
 * A part or a liquid that was taken out of a vehicle.
 *
 * @param key by which the vehicle's record calls it: stage and item of the sheet that weighs it, or a number of its own
 * @param massKg by scale, or by dip and density
 * @param volumeL where it was dipped
 * @param first what becomes of it unless somebody decided otherwise
 * @param since when it was weighed or dipped
 */
public record Thing(
        String key,
        String what,
        ListOfWaste.Row row,
        BigDecimal massKg,
        Optional<BigDecimal> volumeL,
        Optional<Density> density,
        Fate first,
        Instant since,
        OfThing said) {

    /** Where it stands. */
    public enum Standing {
        UNPLACED,
        IN_CONTAINER,
        /** Kept for reuse and not tested yet. */
        QUARANTINE,
        IN_STORE,
        UNFIT,
        AWAITING,
        GONE
    }

    public Fate fate() {
        return said.decided().map(Decided::fate).orElse(first);
    }

    public Optional<String> container() {
        return said.placed().map(Placed::container);
    }

    /** What lies in the container; it stays what it was, though the thing may have been weighed again. */
    public BigDecimal countedKg() {
        return said.placed().map(Placed::massKg).orElse(massKg);
    }

    public Optional<LocalDate> dueOn() {
        return said.left().isPresent() ? Optional.empty() : said.decided().flatMap(Decided::dueOn);
    }

    public boolean overdue(LocalDate today) {
        return fate().leaves() && dueOn().filter(day -> day.isBefore(today)).isPresent();
    }

    public Standing standing() {
        if (container().isPresent()) {
            return Standing.IN_CONTAINER;
        } else if (said.left().isPresent()) {
            return Standing.GONE;
        } else if (fate().leaves()) {
            return said.decided().flatMap(Decided::party).isPresent() ? Standing.AWAITING : Standing.UNPLACED;
        } else if (fate().stays() && said.decided().flatMap(Decided::place).isPresent()) {
            return said.tested()
                    .map(Tested::fit)
                    .map(fit -> fit ? Standing.IN_STORE : Standing.UNFIT)
                    .orElse(Standing.QUARANTINE);
        }
        return Standing.UNPLACED;
    }
}

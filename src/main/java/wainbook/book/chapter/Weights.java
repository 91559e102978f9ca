package wainbook.book.chapter;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Voided;

/** Masses that were weighed on the vehicle, in the order of the record; what was voided is left out. */
final class Weights {

    private static final String KILOGRAM = "kg";

    private Weights() {}

    static List<Entry> of(Material material) {
        Set<UUID> voided = new HashSet<>();
        material.history().saying(Voided.class).forEach(entry -> voided.add(((Voided) entry.saying()).entry()));
        return material.history()
                .saying(Measured.class)
                .filter(entry -> ((Measured) entry.saying()).unit().equals(KILOGRAM) && !voided.contains(entry.id()))
                .toList();
    }
}

package wainbook.trace;

import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.station.StationSaying.Voided;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PlacingVoided;

/** Whether what an entry says was taken back by a later one. It still is on record, and is still found. */
public final class Undone {

    private static final Set<UUID> NONE = Set.of();

    private Undone() {}

    public static boolean is(Entry entry, History history) {
        return entry.saying() instanceof Placed said
                ? placedElsewhere(entry, said, history)
                : voided(history).contains(entry.id());
    }

    private static Set<UUID> voided(History history) {
        return history.folded(
                Undone.class,
                NONE,
                (known, entry) -> entry.saying() instanceof Voided said
                        ? Stream.concat(known.stream(), Stream.of(said.entry())).collect(Collectors.toUnmodifiableSet())
                        : known);
    }

    private static boolean placedElsewhere(Entry entry, Placed said, History history) {
        return history.saying(PlacingVoided.class)
                .filter(later -> later.number() > entry.number())
                .map(later -> (PlacingVoided) later.saying())
                .anyMatch(later ->
                        later.thing().equals(said.thing()) && later.container().equals(said.container()));
    }
}

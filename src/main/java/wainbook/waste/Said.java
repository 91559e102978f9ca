package wainbook.waste;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.waste.WasteSaying.Decided;
import wainbook.waste.WasteSaying.EngineMadeUnusable;
import wainbook.waste.WasteSaying.LeftAsPart;
import wainbook.waste.WasteSaying.Placed;
import wainbook.waste.WasteSaying.PlacingVoided;
import wainbook.waste.WasteSaying.Removed;
import wainbook.waste.WasteSaying.Tested;

/**
 * What was said of the things taken out of one vehicle, besides what its check sheets have.
 *
 * @param engine the entry by which its engine was made unusable
 */
public record Said(Map<String, OfThing> byThing, Optional<Entry> engine) {

    /** What was said last of one thing. */
    public record OfThing(
            Optional<Removed> removed,
            Optional<Decided> decided,
            Optional<Instant> decidedAt,
            Optional<Tested> tested,
            Optional<LeftAsPart> left,
            Optional<Placed> placed) {

        static final OfThing NOTHING = new OfThing(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        OfThing and(WasteSaying saying, Instant at) {
            if (saying instanceof Removed said) {
                return new OfThing(Optional.of(said), decided, decidedAt, tested, left, placed);
            } else if (saying instanceof Decided said) {
                return new OfThing(removed, Optional.of(said), Optional.of(at), Optional.empty(), left, placed);
            } else if (saying instanceof Tested said) {
                return new OfThing(removed, decided, decidedAt, Optional.of(said), left, placed);
            } else if (saying instanceof LeftAsPart said) {
                return new OfThing(removed, decided, decidedAt, tested, Optional.of(said), placed);
            } else if (saying instanceof Placed said) {
                return new OfThing(removed, decided, decidedAt, tested, left, Optional.of(said));
            }
            return new OfThing(removed, decided, decidedAt, tested, left, Optional.empty());
        }
    }

    private static final Said NOTHING = new Said(Map.of(), Optional.empty());

    public static Said of(History history) {
        return history.folded(Said.class, NOTHING, Said::and);
    }

    private Said and(Entry entry) {
        if (entry.saying() instanceof EngineMadeUnusable) {
            return new Said(byThing, Optional.of(entry));
        }
        return entry.saying() instanceof WasteSaying said
                ? thing(said).map(key -> with(key, said, entry)).orElse(this)
                : this;
    }

    private Said with(String key, WasteSaying said, Entry entry) {
        var more = new LinkedHashMap<>(byThing);
        more.put(key, of(key).and(said, entry.moment().at()));
        return new Said(more, engine);
    }

    private static Optional<String> thing(WasteSaying saying) {
        if (saying instanceof Removed said) {
            return Optional.of(said.thing());
        } else if (saying instanceof Decided said) {
            return Optional.of(said.thing());
        } else if (saying instanceof Tested said) {
            return Optional.of(said.thing());
        } else if (saying instanceof LeftAsPart said) {
            return Optional.of(said.thing());
        } else if (saying instanceof Placed said) {
            return Optional.of(said.thing());
        } else if (saying instanceof PlacingVoided said) {
            return Optional.of(said.thing());
        }
        return Optional.empty();
    }

    public OfThing of(String key) {
        return byThing.getOrDefault(key, OfThing.NOTHING);
    }

    /** What the next thing that no item asks for is called. */
    public String nextThing() {
        return "n"
                + (1
                        + byThing.values().stream()
                                .filter(one -> one.removed().isPresent())
                                .count());
    }
}

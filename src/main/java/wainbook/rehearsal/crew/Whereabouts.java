package wainbook.rehearsal.crew;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** At which vehicle a person or an instrument is seen when: vehicles are played one after another, and nobody is at two. */
public final class Whereabouts {

    /** The way from one vehicle to the next. */
    private static final Duration WAY = Duration.ofSeconds(100);

    private final Map<String, NavigableMap<Instant, String>> seen = new HashMap<>();

    /** One vehicle, as those see it who are chosen for it. */
    public record At(Whereabouts whereabouts, String order) {

        public void seen(String code, Instant when) {
            whereabouts.seen.computeIfAbsent(code, none -> new TreeMap<>()).put(when, order);
        }

        /** Whether nothing is known of it at another vehicle from a little before until so long after. */
        boolean free(String code, Instant from, Duration stay) {
            NavigableMap<Instant, String> known = whereabouts.seen.getOrDefault(code, new TreeMap<>());
            return known.subMap(from.minus(WAY), true, from.plus(stay).plus(WAY), true).values().stream()
                    .allMatch(order::equals);
        }

        /** The first moment from which it can be here. */
        public Instant here(String code, Instant from) {
            Instant when = from;
            while (!free(code, when, Duration.ZERO)) {
                when = when.plus(WAY);
            }
            return when;
        }
    }

    public At at(String order) {
        return new At(this, order);
    }
}

package wainbook.trace;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.page.Leaf;

/**
 * What was found.
 *
 * @param query as it was typed
 * @param exact whether only the whole code was looked for, since too little was typed for a beginning
 */
public record Trace(String query, boolean exact, List<Vehicle> vehicles, Leaf leaf) {

    public Trace {
        vehicles = List.copyOf(vehicles);
    }

    /**
     * A vehicle and the newest places in its record.
     *
     * @param places shown, newest first
     * @param more entries that fit and are not shown
     */
    public record Vehicle(
            String order,
            Optional<String> vin,
            Optional<String> registration,
            String operator,
            String phase,
            List<Place> places,
            long more) {
        public Vehicle {
            places = List.copyOf(places);
        }

        public String path() {
            return "/orders/" + order;
        }
    }

    /**
     * A place in the record.
     *
     * @param code what was found, as it stands on record
     * @param what was done, in words
     * @param passed absent where nothing is judged
     * @param doubt the containment that leaves it in doubt
     */
    public record Place(
            String sort,
            String code,
            long entry,
            Instant at,
            String who,
            String what,
            Optional<Boolean> passed,
            boolean voided,
            Optional<String> doubt) {}

    static Trace nothingAsked() {
        return new Trace("", false, List.of(), new Leaf(1, Tracing.LEAF, 0, "/trace"));
    }

    public boolean asked() {
        return !query.isEmpty();
    }

    public String csv() {
        return "/trace.csv?q=" + encoded();
    }

    String encoded() {
        return URLEncoder.encode(query, StandardCharsets.UTF_8);
    }

    /** As lines of a spreadsheet; people by their number, since a file leaves the works. */
    List<List<String>> lines() {
        return vehicles.stream()
                .flatMap(vehicle -> vehicle.places().stream()
                        .map(place -> List.of(
                                vehicle.order(),
                                vehicle.vin().orElse(""),
                                vehicle.registration().orElse(""),
                                place.sort(),
                                place.code(),
                                String.valueOf(place.entry()),
                                place.at().toString(),
                                place.who(),
                                place.what(),
                                place.passed().map(Tracing::word).orElse(""),
                                place.voided() ? Tracing.voided() : "",
                                place.doubt().orElse(""))))
                .toList();
    }
}

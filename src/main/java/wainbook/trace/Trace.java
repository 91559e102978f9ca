package wainbook.trace;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
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
            Dates dates,
            List<Place> places,
            long more) {
        public Vehicle {
            places = List.copyOf(places);
        }

        public String path() {
            return "/orders/" + order;
        }
    }

    /** When it came onto the line, left it, and was handed over; each absent before that. */
    public record Dates(Optional<Instant> onLine, Optional<Instant> offLine, Optional<Instant> handedOver) {

        static Dates of(WorkOrderRow row) {
            return new Dates(
                    Optional.ofNullable(row.cameOnLine),
                    Optional.ofNullable(row.leftLine),
                    Optional.of(row.since).filter(since -> row.phase == WorkOrder.Phase.HANDED_OVER));
        }

        List<String> cells() {
            return Stream.of(onLine, offLine, handedOver)
                    .map(at -> at.map(Instant::toString).orElse(""))
                    .toList();
        }
    }

    /**
     * A place in the record.
     *
     * @param code what was found, as it stands on record
     * @param path of the entry
     * @param what was done, in words
     * @param passed absent where nothing is judged
     * @param doubt the containment that leaves it in doubt
     */
    public record Place(
            String sort,
            String code,
            long entry,
            String path,
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
                .flatMap(vehicle -> vehicle.places().stream().map(place -> cells(vehicle, place)))
                .toList();
    }

    private static List<String> cells(Vehicle vehicle, Place place) {
        return Stream.of(
                        List.of(
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
                                place.doubt().orElse(""),
                                vehicle.operator(),
                                vehicle.phase()),
                        vehicle.dates().cells())
                .flatMap(List::stream)
                .toList();
    }
}

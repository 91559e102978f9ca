package wainbook.line.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import wainbook.engineering.flow.status.StationPast;
import wainbook.engineering.flow.status.StationPast.Span;
import wainbook.engineering.flow.status.Timeline;
import wainbook.gate.past.Stay;
import wainbook.ledger.Entry;
import wainbook.line.station.Layout;
import wainbook.process.Station;
import wainbook.safety.stop.Stop;
import wainbook.works.shift.Shifts;

/**
 * What the record has of the line over a period. Hours and takt are those in force today: what they were then is not looked up.
 *
 * @param hours the shifts of a station, by its code
 * @param shifts in which any station of the line works
 * @param stops of work at places
 */
record LinePast(
        Period period,
        Layout layout,
        Function<String, Shifts> hours,
        Shifts shifts,
        Optional<Integer> taktMinutes,
        List<Gathered> vehicles,
        List<Stop> stops) {

    private static final double MILLIS_A_MINUTE = 60_000;

    LinePast {
        vehicles = List.copyOf(vehicles);
        stops = List.copyOf(stops);
    }

    /** The clock of the line, which runs while any station works, from before anything that the period knows of. */
    Hours works() {
        return Hours.of(shifts, earliest(), period.end());
    }

    private Instant earliest() {
        return vehicles.stream()
                .flatMap(one -> one.way().began().stream())
                .filter(period.begin()::isAfter)
                .min(Instant::compareTo)
                .orElse(period.begin());
    }

    /** What every station was doing, of all kinds of vehicles: a station's time belongs to none. */
    Timeline timeline() {
        return new Timeline(
                IntStream.range(0, layout.stations().size())
                        .mapToObj(at -> station(at)
                                .stretches(
                                        period.begin().toEpochMilli(),
                                        period.end().toEpochMilli()))
                        .toList(),
                layout.before());
    }

    private StationPast station(int index) {
        Station station = layout.stations().get(index);
        int abreast = Math.max(1, layout.of(station.stage().orElseThrow()).size());
        var stays = new ArrayList<StationPast.Stay>();
        var down = new ArrayList<Span>();
        Instant first = period.begin();
        for (Gathered one : vehicles) {
            for (Stay stay : one.way().onLine().toList()) {
                if (stay.place().equals(station.code()) && stay.within(period.begin(), period.end())) {
                    first = stay.arrived().isBefore(first) ? stay.arrived() : first;
                    stays.add(stay(one, stay, abreast));
                    stay.standstills().stream()
                            .map(call ->
                                    within(stay, call.since(), call.resolved().map(step -> step.at())))
                            .forEach(down::add);
                }
            }
        }
        stops.stream()
                .filter(stop -> stop.order().isEmpty() && stop.said().station().equals(Optional.of(station.code())))
                .map(stop -> span(at(stop.stopped()), stop.lifted().map(LinePast::at)))
                .forEach(down::add);
        List<Span> working =
                Hours.of(hours.apply(station.code()), first, period.end()).spans();
        return new StationPast(working, down, stays);
    }

    private StationPast.Stay stay(Gathered one, Stay stay, int abreast) {
        GateSpans gate = GateSpans.of(stay, one.doneSince());
        return new StationPast.Stay(
                span(stay.arrived(), stay.left()),
                stay.holds().stream()
                        .map(hold -> within(stay, hold.from(), hold.to()))
                        .toList(),
                gate.done(),
                gate.signed(),
                Math.round(one.taktMin() * abreast * MILLIS_A_MINUTE),
                stay.stage().flatMap(one.way()::stageAfter).map(layout::of).orElse(List.of()));
    }

    private static Instant at(Entry entry) {
        return entry.moment().at();
    }

    static Span span(Instant from, Optional<Instant> to) {
        return new Span(from.toEpochMilli(), to.map(Instant::toEpochMilli).orElse(Long.MAX_VALUE));
    }

    static Span within(Stay stay, Instant from, Optional<Instant> to) {
        Instant begun = from.isBefore(stay.arrived()) ? stay.arrived() : from;
        Optional<Instant> ended = stay.left()
                .filter(left -> to.isEmpty() || left.isBefore(to.get()))
                .or(() -> to);
        return span(begun, ended);
    }
}

package wainbook.line.forecast.state;

import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.order.OrderSaying.Moved;
import wainbook.works.appointment.AppointmentKind;
import wainbook.works.shift.Shifts;

/**
 * The line at one time, by the records of its vehicles as they stood then: for now the whole of them, for a time gone by what was
 * recorded by then. Shifts, routes and sheets are today's in either case.
 */
public record AsOf(
        Instant at, Shifts shifts, ProcessToday process, List<AppointmentKind> appointments, Optional<SetOrder> set) {

    /** Where nobody has set an order of entry. */
    public AsOf(Instant at, Shifts shifts, ProcessToday process, List<AppointmentKind> appointments) {
        this(at, shifts, process, appointments, Optional.empty());
    }

    /** @param past what the record of a vehicle says of times */
    public TheLineNow line(List<History> records, Function<History, VehiclePast> past) {
        After after = After.of(appointments, records);
        var muster = new Muster(process, WorkingMinutes.of(shifts), after, at);
        EntryRule rule = EntryRule.of(records.stream()
                        .flatMap(record -> EntryRule.came(record).stream())
                        .toList())
                .following(set);
        List<OnHand> vehicles = muster.vehicles(records);
        return new TheLineNow(
                new Calendar(shifts, at),
                new PastTimes(records.stream().map(past).toList()),
                MoveTimes.of(moves(records), shifts.zone(), at),
                rule,
                process.posts(vehicles.stream()
                        .map(vehicle -> vehicle.plannedMinutes().keySet())
                        .flatMap(Collection::stream)
                        .toList()),
                inOrder(vehicles, rule, ordered(records)),
                after);
    }

    private static Stream<Instant> moves(List<History> records) {
        return records.stream()
                .flatMap(record -> record.saying(Moved.class))
                .filter(entry -> MoveTimes.isMove((Moved) entry.saying()))
                .map(entry -> entry.moment().at());
    }

    private static Map<String, Instant> ordered(List<History> records) {
        Map<String, Instant> ordered = new HashMap<>();
        records.forEach(record -> EntryRule.ordered(record)
                .ifPresent(entry ->
                        ordered.put(record.subject().code(), entry.moment().at())));
        return ordered;
    }

    private static List<OnHand> inOrder(List<OnHand> vehicles, EntryRule rule, Map<String, Instant> ordered) {
        return vehicles.stream()
                .map(vehicle -> new EntryRule.Waiting(vehicle, ordered.get(vehicle.order())))
                .sorted(rule.first())
                .map(EntryRule.Waiting::vehicle)
                .toList();
    }
}

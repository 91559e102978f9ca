package wainbook.line.forecast.kept;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.ledger.History;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.line.forecast.past.Cures;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.line.forecast.state.AsOf;
import wainbook.line.forecast.state.ProcessToday;
import wainbook.line.forecast.state.SetOrder;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.works.shift.Shifts;

/**
 * What the forecast would have said on past mornings, from what was recorded by then. Worked out afterwards: with today's sheets,
 * shifts and model, so it is no proof of what was said then.
 *
 * @param records of all vehicles, whole
 * @param set orders of entry: each is heeded from its time on
 */
record BackTest(
        Shifts shifts, ProcessToday process, Optional<Integer> taktMinutes, List<History> records, List<SetOrder> set) {

    /** When a forecast is made on a morning: before anybody works. */
    static final LocalTime MORNING = LocalTime.of(5, 0);

    private static final int REPLICATIONS = 1000;

    BackTest(Shifts shifts, ProcessToday process, Optional<Integer> taktMinutes, List<History> records) {
        this(shifts, process, taktMinutes, records, List.of());
    }

    /** The days on which a shift begins, from the first that has something to foretell to the one before the last given. */
    List<LocalDate> days(LocalDate before) {
        return records.stream()
                .flatMap(record -> record.entries().stream().limit(1))
                .map(entry -> LocalDate.ofInstant(entry.moment().at(), shifts.zone()))
                .min(LocalDate::compareTo)
                .map(first -> first.plusDays(1)
                        .datesUntil(before.isAfter(first.plusDays(1)) ? before : first.plusDays(1))
                        .filter(day -> Outcomes.worked(shifts, day))
                        .toList())
                .orElse(List.of());
    }

    /** What would have been said on one morning. */
    List<Prediction> on(LocalDate day, Map<String, VehiclePast> known) {
        Instant at = day.atTime(MORNING).atZone(shifts.zone()).toInstant();
        List<History> then = records.stream()
                .map(record -> upTo(record, at))
                .filter(record -> !record.isEmpty())
                .toList();
        TheLineNow line = new AsOf(at, shifts, process, List.of(), SetOrder.at(set, at)).line(then, past(known));
        return Prediction.of(
                line, Forecast.of(line.line(), Effort.exactly(LineForecast.SEED, REPLICATIONS)), taktMinutes);
    }

    private static History upTo(History record, Instant at) {
        int last = record.entries().size() - 1;
        return last < 0 || !record.entries().get(last).moment().at().isAfter(at) ? record : record.upTo(at);
    }

    /** What a record says of times is the same on every morning after its end. */
    private Function<History, VehiclePast> past(Map<String, VehiclePast> known) {
        return record -> known.computeIfAbsent(
                record.subject().code() + "/" + record.number(),
                key -> VehiclePast.of(
                        record,
                        WorkingMinutes.of(shifts),
                        binding -> Cures.workMinutes(process.sheet(binding.sheet(), binding.revision()))));
    }

    static Map<String, VehiclePast> nothingKnown() {
        return new HashMap<>();
    }
}

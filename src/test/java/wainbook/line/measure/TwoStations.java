package wainbook.line.measure;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wainbook.gate.passage.Passage;
import wainbook.gate.past.WrittenBus;
import wainbook.line.station.Layout;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.works.shift.Break;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** A line of stages, each with one station, and the record of the buses on it. */
final class TwoStations {

    static final ZoneId ZONE = ZoneId.of("Europe/London");

    /** Every minute of the clock is worked. */
    static final Shifts ALWAYS = new Shifts(List.of(), ZONE);

    /** 07:00 to 15:30 on weekdays with a break of half an hour; a holiday on the Tuesday. */
    static final Shifts DAY = new Shifts(
            List.of(Shift.everywhere(
                    "day", 7 * 60, 15 * 60 + 30, List.of(DayOfWeek.values()).subList(0, 5))),
            List.of(new Break(12 * 60, 12 * 60 + 30)),
            Set.of(LocalDate.of(2026, 3, 3)),
            ZONE);

    private TwoStations() {}

    static Layout layout(String... codes) {
        var stations = new ArrayList<Station>();
        Map<String, Stage> stages = new LinkedHashMap<>();
        var before = new ArrayList<List<Integer>>();
        for (int i = 0; i < codes.length; i++) {
            stages.put(codes[i], new Stage(codes[i], i + 1, codes[i] + " stage"));
            stations.add(new Station(WrittenBus.station(codes[i]), Optional.of(codes[i]), codes[i] + " station"));
            before.add(i == 0 ? List.of() : List.of(i - 1));
        }
        return new Layout(stations, stages, before);
    }

    static LinePast past(long fromMinute, long toMinute, Shifts shifts, Layout layout, WrittenBus... buses) {
        return new LinePast(
                new Period(
                        LocalDate.of(2026, 3, 2),
                        LocalDate.of(2026, 3, 2),
                        WrittenBus.at(fromMinute),
                        WrittenBus.at(toMinute)),
                layout,
                station -> shifts,
                shifts,
                Optional.of(90),
                Arrays.stream(buses).map(bus -> gathered(bus, shifts)).toList(),
                List.of());
    }

    private static Gathered gathered(WrittenBus bus, Shifts shifts) {
        return new Gathered(bus.way(), Passage.of(bus.history(), shifts::workingMinutes), 90, Optional.empty());
    }
}

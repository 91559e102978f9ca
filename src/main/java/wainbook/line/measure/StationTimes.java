package wainbook.line.measure;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.engineering.flow.status.Timeline;
import wainbook.process.Stage;
import wainbook.process.Station;

/**
 * How long a station did what over a period, in minutes; breaks are among the time off shift. All of them together are the period.
 *
 * @param downWithVehicleMinutes of the minutes down, those in which a vehicle stood there
 * @param soleMinutes in which it alone was the bottleneck
 */
public record StationTimes(
        Station station, Stage stage, Map<Doing, Double> minutes, double downWithVehicleMinutes, double soleMinutes) {

    private static final double MILLIS_A_MINUTE = 60_000;

    public StationTimes {
        minutes = Map.copyOf(minutes);
    }

    static StationTimes of(Timeline timeline, int index, Station station, Stage stage, double soleMinutes) {
        Map<Doing, Double> minutes = new EnumMap<>(Doing.class);
        Arrays.stream(Doing.values())
                .forEach(doing -> minutes.put(doing, timeline.millis(index, doing) / MILLIS_A_MINUTE));
        double down = timeline.stations().get(index).stream()
                .filter(one -> one.doing() == Doing.DOWN && one.vehicle())
                .mapToDouble(Timeline.Stretch::minutes)
                .sum();
        return new StationTimes(station, stage, minutes, down, soleMinutes);
    }

    public double minutes(Doing doing) {
        return minutes.get(doing);
    }

    /** All but off shift. */
    public double workingMinutes() {
        return Arrays.stream(Doing.values())
                .filter(doing -> doing != Doing.OFF_SHIFT)
                .mapToDouble(this::minutes)
                .sum();
    }

    /** Of its working time; 0 where it did not work. */
    public double share(Doing doing) {
        double all = workingMinutes();
        return all > 0 ? minutes(doing) / all : 0;
    }

    /** APT: work was open and nothing stood in its way; whether a hand was on it the record does not know. */
    public double productionMinutes() {
        return minutes(Doing.WORKING) + minutes(Doing.OVER_TAKT);
    }

    /** ADET: the vehicle was there and its work stood. */
    public double delayMinutes() {
        return minutes(Doing.HELD) + minutes(Doing.AWAITING_SIGN_OFF) + downWithVehicleMinutes;
    }

    public OptionalDouble indicator(Indicator indicator) {
        return indicator.of(elements(), NOTHING_COUNTED);
    }

    private Indicator.Minutes elements() {
        return elements(List.of(this), Double.NaN);
    }

    private static final Indicator.Quantities NOTHING_COUNTED = new Indicator.Quantities(0, 0, 0, 0, 0);

    /** Of several stations together. Planned downtime and set-up are not on record: PBT is working time, AUBT is APT + ADET. */
    static Indicator.Minutes elements(List<StationTimes> stations, double orderExecutionMinutes) {
        double production = sum(stations, StationTimes::productionMinutes);
        double delay = sum(stations, StationTimes::delayMinutes);
        return new Indicator.Minutes(
                sum(stations, StationTimes::workingMinutes),
                production + delay,
                production,
                delay,
                Double.NaN,
                orderExecutionMinutes);
    }

    private static double sum(List<StationTimes> stations, ToDoubleFunction<StationTimes> of) {
        return stations.stream().mapToDouble(of).sum();
    }
}

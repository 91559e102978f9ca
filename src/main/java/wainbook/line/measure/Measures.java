package wainbook.line.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import wainbook.engineering.flow.status.Bottleneck;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Indicator;
import wainbook.engineering.flow.status.LineBalance;
import wainbook.engineering.flow.status.LostMinutes;
import wainbook.engineering.flow.status.Timeline;
import wainbook.gate.passage.Passage;
import wainbook.gate.passage.Yield;
import wainbook.line.station.Layout;
import wainbook.process.Stage;
import wainbook.process.Station;

/**
 * Measures of the line over a period.
 *
 * @param kind of vehicle that throughput, yield and calls are of; empty for all. What stations did is of all kinds.
 * @param taktMinutes of the works
 * @param stations from the start of the line to its end
 * @param lost minutes that stations waited, by cause, the greatest first
 * @param balance of the mean work at each station against the takt; empty where a stage signed nothing off or there is no takt
 * @param bottleneckAtEnd the station that is the bottleneck when the period ends; empty where every station waits then
 * @param turningPoint the station where waiting turns from blocked to starved
 */
public record Measures(
        Period period,
        String kind,
        Optional<Integer> taktMinutes,
        Throughput throughput,
        Yield yield,
        List<StationTimes> stations,
        List<Lost> lost,
        Bottleneck bottleneck,
        OptionalInt bottleneckAtEnd,
        OptionalInt turningPoint,
        Optional<LineBalance> balance,
        List<HelpTimes> calls) {

    private static final double MILLIS_A_MINUTE = 60_000;

    public Measures {
        stations = List.copyOf(stations);
        lost = List.copyOf(lost);
        calls = List.copyOf(calls);
    }

    /**
     * Station-minutes waited for one cause.
     *
     * @param station that is the cause; empty where nothing was released
     */
    public record Lost(Optional<Station> station, Doing doing, double minutes, double upTo) {}

    static Measures of(LinePast past, String kind) {
        List<Gathered> vehicles =
                past.vehicles().stream().filter(one -> one.of(kind)).toList();
        Timeline timeline = past.timeline();
        Timeline worked = timeline.whileAnyWorks();
        Bottleneck bottleneck = Bottleneck.of(worked);
        List<StationTimes> stations = stations(past.layout(), timeline, bottleneck);
        return new Measures(
                past.period(),
                kind,
                past.taktMinutes(),
                Throughput.of(vehicles, past.period(), past.works()),
                yieldOf(vehicles, past),
                stations,
                lost(past.layout(), LostMinutes.of(timeline)),
                bottleneck,
                atEnd(bottleneck, worked),
                turningPoint(stations),
                balance(past, stations),
                HelpTimes.of(vehicles, past.period()));
    }

    private static List<StationTimes> stations(Layout layout, Timeline timeline, Bottleneck bottleneck) {
        var all = new ArrayList<StationTimes>();
        for (int at = 0; at < layout.stations().size(); at++) {
            double sole = bottleneck.soleMinutes().get(at);
            all.add(StationTimes.of(timeline, at, layout.stations().get(at), layout.stage(at), sole));
        }
        return all;
    }

    private static Yield yieldOf(List<Gathered> vehicles, LinePast past) {
        return Yield.of(
                vehicles.stream()
                        .flatMap(one -> one.passages().stream())
                        .filter(one -> past.period().holds(one.signedAt()))
                        .filter(one -> past.layout().stages().containsKey(one.stage()))
                        .toList(),
                List.copyOf(past.layout().stages().keySet()));
    }

    private static List<Lost> lost(Layout layout, List<LostMinutes> lost) {
        double all = lost.stream().mapToDouble(LostMinutes::minutes).sum();
        var rows = new ArrayList<Lost>();
        double sum = 0;
        for (LostMinutes one : lost) {
            sum += one.minutes();
            Optional<Station> station =
                    Optional.of(one.station()).filter(at -> at >= 0).map(layout.stations()::get);
            rows.add(new Lost(station, one.doing(), one.minutes(), sum / all));
        }
        return rows;
    }

    private static OptionalInt atEnd(Bottleneck bottleneck, Timeline worked) {
        List<Bottleneck.Moment> moments = bottleneck.moments();
        if (moments.isEmpty()) {
            return OptionalInt.empty();
        }
        Bottleneck.Moment last = moments.get(moments.size() - 1);
        return last.toMinute() == worked.endMinute() ? OptionalInt.of(last.station()) : OptionalInt.empty();
    }

    private static OptionalInt turningPoint(List<StationTimes> stations) {
        return stations.isEmpty()
                ? OptionalInt.empty()
                : Bottleneck.turningPoint(
                        stations.stream().map(one -> one.share(Doing.BLOCKED)).toList(),
                        stations.stream().map(one -> one.share(Doing.STARVED)).toList());
    }

    /** Work of all vehicles at a stage, shared among those it signed off, of all kinds; stations side by side share it again. */
    private static Optional<LineBalance> balance(LinePast past, List<StationTimes> stations) {
        Map<String, Long> signed = new LinkedHashMap<>();
        past.vehicles().stream()
                .flatMap(one -> one.passages().stream())
                .filter(one -> past.period().holds(one.signedAt()))
                .forEach(one -> signed.merge(one.stage(), 1L, Long::sum));
        boolean all =
                stations.stream().map(StationTimes::stage).map(Stage::code).allMatch(signed::containsKey);
        if (!all || stations.isEmpty()) {
            return Optional.empty();
        }
        return past.taktMinutes()
                .map(takt -> LineBalance.of(
                        stations.stream()
                                .map(one -> load(one, stations)
                                        / signed.get(one.stage().code()))
                                .toList(),
                        takt));
    }

    private static double load(StationTimes one, List<StationTimes> stations) {
        List<StationTimes> abreast = stations.stream()
                .filter(other -> other.stage().code().equals(one.stage().code()))
                .toList();
        return abreast.stream().mapToDouble(StationTimes::productionMinutes).sum() / abreast.size();
    }

    /** Vehicles that the takt asks for in the working time of the period; empty without a takt, or of one kind: the takt is of all. */
    public OptionalDouble planned() {
        return taktMinutes.isPresent() && kind.isEmpty() && throughput.workingMinutes() > 0
                ? OptionalDouble.of(throughput.workingMinutes() / taktMinutes.get())
                : OptionalDouble.empty();
    }

    /** Of all stations together. */
    public OptionalDouble indicator(Indicator indicator) {
        return indicator.of(
                elements(),
                new Indicator.Quantities(
                        throughput.finished().size(),
                        throughput.finished().size(),
                        0,
                        yield.passages().size(),
                        (int) yield.passages().stream()
                                .filter(Passage::firstPass)
                                .count()));
    }

    /** Stations work for all kinds, so that the time of one kind on the line stands beside nothing and is left out. */
    public Indicator.Minutes elements() {
        double onTheLine = throughput.little().numberMillis() / MILLIS_A_MINUTE;
        return StationTimes.elements(stations, kind.isEmpty() ? onTheLine : Double.NaN);
    }

    /** Whether anything was on the line. */
    public boolean any() {
        return !throughput.finished().isEmpty()
                || !throughput.reworked().isEmpty()
                || !throughput.wip().isEmpty()
                || stations.stream().anyMatch(one -> one.productionMinutes() + one.delayMinutes() > 0);
    }
}

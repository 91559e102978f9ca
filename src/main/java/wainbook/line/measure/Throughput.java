package wainbook.line.measure;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wainbook.engineering.flow.score.Quantile;
import wainbook.engineering.flow.status.Little;
import wainbook.engineering.flow.status.StationPast.Span;
import wainbook.gate.past.VehicleWay;

/**
 * What left the line in a period, how long it had been on it, and what is on it at the end. All times are working minutes of the line.
 *
 * @param workingMinutes of the period
 * @param finished the vehicles that left as finished, the first to leave first: made, and none that came back
 * @param reworked those that left it again after they had come back; they pass a part of the line only, and are in no figure of the made
 * @param leadMinutes how long each of them had been on the line, bays included; rising
 * @param cycleMinutes mean interval between one leaving and the next; empty below two
 * @param wip what is on the line or off it to come back when the period ends, the longest there first
 */
public record Throughput(
        double workingMinutes,
        List<String> finished,
        List<String> reworked,
        List<Double> leadMinutes,
        OptionalDouble cycleMinutes,
        List<Aged> wip,
        Little little) {

    private static final double MILLIS_A_MINUTE = 60_000;
    private static final double MOST = 0.8;

    /** A vehicle and its working minutes on the line so far. */
    public record Aged(String order, double minutes) {}

    private record Through(String order, boolean cameBack, Instant began, Optional<Instant> finished) {

        boolean left(Period period) {
            return finished.filter(period::holds).isPresent();
        }

        boolean there(Instant at) {
            return began.isBefore(at) && finished.map(at::isBefore).orElse(true);
        }
    }

    public Throughput {
        finished = List.copyOf(finished);
        reworked = List.copyOf(reworked);
        leadMinutes = List.copyOf(leadMinutes);
        wip = List.copyOf(wip);
    }

    static Throughput of(List<Gathered> vehicles, Period period, Hours works) {
        List<Through> all = vehicles.stream()
                .map(Gathered::way)
                .flatMap(way -> through(way).stream())
                .toList();
        Map<Boolean, List<Through>> gone = all.stream()
                .filter(one -> one.left(period))
                .sorted((one, other) ->
                        one.finished().orElseThrow().compareTo(other.finished().orElseThrow()))
                .collect(Collectors.partitioningBy(Through::cameBack));
        List<Through> left = gone.get(false);
        return new Throughput(
                works.between(period.begin(), period.end()) / MILLIS_A_MINUTE,
                left.stream().map(Through::order).toList(),
                gone.get(true).stream().map(Through::order).toList(),
                left.stream()
                        .map(one -> works.between(one.began(), one.finished().orElseThrow()) / MILLIS_A_MINUTE)
                        .sorted()
                        .toList(),
                cycle(left, works),
                all.stream()
                        .filter(one -> one.there(period.end()))
                        .map(one -> new Aged(one.order(), works.between(one.began(), period.end()) / MILLIS_A_MINUTE))
                        .sorted((one, other) -> Double.compare(other.minutes(), one.minutes()))
                        .toList(),
                little(all, period, works));
    }

    private static Optional<Through> through(VehicleWay way) {
        return way.began().map(began -> new Through(way.order(), way.cameBack(), began, way.finished()));
    }

    private static OptionalDouble cycle(List<Through> left, Hours works) {
        if (left.size() < 2) {
            return OptionalDouble.empty();
        }
        Instant first = left.get(0).finished().orElseThrow();
        Instant last = left.get(left.size() - 1).finished().orElseThrow();
        return OptionalDouble.of(works.between(first, last) / MILLIS_A_MINUTE / (left.size() - 1));
    }

    /** By the works' clock: whoever is there at the end leaves it after that. */
    private static Little little(List<Through> all, Period period, Hours works) {
        return Little.of(
                all.stream()
                        .map(one -> new Span(
                                works.at(one.began()),
                                one.finished()
                                        .filter(at -> !at.isAfter(period.end()))
                                        .map(works::at)
                                        .orElse(Long.MAX_VALUE)))
                        .toList(),
                works.at(period.begin()),
                works.at(period.end()));
    }

    public OptionalDouble leadMedian() {
        return quantile(leadMinutes, 0.5);
    }

    /** Eight in ten took no longer. */
    public OptionalDouble leadMost() {
        return quantile(leadMinutes, MOST);
    }

    public OptionalDouble wipMedian() {
        return quantile(wip.stream().map(Aged::minutes).sorted().toList(), 0.5);
    }

    /** How many of those there are there for longer than eight in ten of the finished were. */
    public long old() {
        OptionalDouble most = leadMost();
        return most.isEmpty()
                ? 0
                : wip.stream().filter(one -> one.minutes() > most.getAsDouble()).count();
    }

    static OptionalDouble quantile(List<Double> rising, double share) {
        double[] sorted = rising.stream().mapToDouble(one -> one).toArray();
        return sorted.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(Quantile.TYPE_8.of(sorted, share));
    }
}

package wainbook.line.measure;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wainbook.station.StationSaying.Help;
import wainbook.station.help.HelpCall;

/**
 * How long calls for help that were raised in a period waited, in minutes of the clock, since whoever calls waits by it.
 *
 * @param answerMinutes from the call until somebody answered or settled it; rising
 * @param settleMinutes from the call until it was settled; rising
 */
public record HelpTimes(Help help, int calls, int stoodStill, List<Double> answerMinutes, List<Double> settleMinutes) {

    private static final double MOST = 0.9;
    private static final double SECONDS_A_MINUTE = 60;

    public HelpTimes {
        answerMinutes = List.copyOf(answerMinutes);
        settleMinutes = List.copyOf(settleMinutes);
    }

    /** Only of kinds that were called. */
    static List<HelpTimes> of(List<Gathered> vehicles, Period period) {
        List<HelpCall> all = vehicles.stream()
                .flatMap(one -> one.way().calls().stream())
                .filter(call -> period.holds(call.since()))
                .toList();
        return Arrays.stream(Help.values())
                .map(help ->
                        all.stream().filter(call -> call.said().help() == help).toList())
                .filter(calls -> !calls.isEmpty())
                .map(HelpTimes::of)
                .toList();
    }

    private static HelpTimes of(List<HelpCall> calls) {
        return new HelpTimes(
                calls.get(0).said().help(),
                calls.size(),
                (int) calls.stream().filter(call -> call.said().workStands()).count(),
                minutes(calls.stream().flatMap(call -> since(call, answered(call)))),
                minutes(calls.stream().flatMap(call -> since(call, settled(call)))));
    }

    private static Optional<Instant> answered(HelpCall call) {
        return Stream.concat(call.answered().stream(), call.resolved().stream())
                .map(HelpCall.Step::at)
                .min(Instant::compareTo);
    }

    private static Optional<Instant> settled(HelpCall call) {
        return call.resolved().map(HelpCall.Step::at);
    }

    private static Stream<Double> since(HelpCall call, Optional<Instant> until) {
        return until.map(at -> Duration.between(call.since(), at).toSeconds() / SECONDS_A_MINUTE).stream();
    }

    private static List<Double> minutes(Stream<Double> minutes) {
        return minutes.sorted().toList();
    }

    public OptionalDouble answerMedian() {
        return Throughput.quantile(answerMinutes, 0.5);
    }

    /** Nine in ten were answered sooner. */
    public OptionalDouble answerMost() {
        return Throughput.quantile(answerMinutes, MOST);
    }

    public OptionalDouble settleMedian() {
        return Throughput.quantile(settleMinutes, 0.5);
    }

    public OptionalDouble settleMost() {
        return Throughput.quantile(settleMinutes, MOST);
    }
}

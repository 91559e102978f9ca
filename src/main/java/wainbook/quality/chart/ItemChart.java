package wainbook.quality.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.Working;
import wainbook.engineering.measurement.IndividualsChart;
import wainbook.engineering.statistics.Capability;
import wainbook.quality.reading.Reading;

/**
 * Individual values and moving ranges of one thing that is measured, in the order of time. The limits come from the first 25
 * to 30 values and are held from there on; before there are 25 they are provisional, and no index is given.
 *
 * @param readings those on the chart, oldest first
 * @param voided how many are left out since they were voided
 * @param leftOut how many are left out since the scale does not fit them
 * @param limits absent below two values
 */
public record ItemChart(
        Charted of,
        Scale scale,
        List<Reading> readings,
        List<Double> values,
        int voided,
        int leftOut,
        Optional<IndividualsChart.Results> limits,
        List<Signal> signals) {

    /** The least number of values that limits are held from, and that an index is made from. */
    public static final int LEAST = 25;

    private static final int MOST_FOR_LIMITS = 30;
    private static final List<Integer> RULES = List.of(1, 2, 3, 5, 7);

    public ItemChart {
        readings = List.copyOf(readings);
        values = List.copyOf(values);
        signals = List.copyOf(signals);
    }

    /** @param all readings of the thing, voided ones too, in the order of time */
    static ItemChart of(Charted of, List<Reading> all) {
        List<Reading> counting = all.stream().filter(one -> !one.voided()).toList();
        Scale scale = counting.isEmpty() ? Scale.AS_READ : Scale.of(counting, of.mixed());
        List<Reading> readings = counting.stream().filter(scale::fits).toList();
        List<Double> values = readings.stream().map(scale::of).toList();
        Optional<IndividualsChart.Results> limits = limits(values);
        return new ItemChart(
                of,
                scale,
                readings,
                values,
                all.size() - counting.size(),
                counting.size() - readings.size(),
                limits,
                limits.map(found -> signals(values, found)).orElse(List.of()));
    }

    private static Optional<IndividualsChart.Results> limits(List<Double> values) {
        if (values.size() < 2) {
            return Optional.empty();
        }
        var asked = new IndividualsChart.Inputs(values, RULES, Optional.of(Math.min(values.size(), MOST_FOR_LIMITS)));
        return new IndividualsChart()
                .of(asked)
                .fold(working -> Optional.of(working.results()), faults -> Optional.empty(), no -> Optional.empty());
    }

    private static List<Signal> signals(List<Double> values, IndividualsChart.Results found) {
        var signals = new ArrayList<Signal>();
        for (int i = 0; i < values.size(); i++) {
            int point = i;
            found.signals().stream()
                    .filter(one -> one.index() == point)
                    .map(one -> new Signal(point, Sign.ofRule(one.rule())))
                    .forEach(signals::add);
            if (i > 0 && Math.abs(values.get(i) - values.get(i - 1)) > found.movingRangeUpper()) {
                signals.add(new Signal(point, Sign.RANGE));
            }
        }
        return signals;
    }

    public int n() {
        return values.size();
    }

    /** How many of the first values the limits come from. */
    public int limitsFrom() {
        return Math.min(n(), MOST_FOR_LIMITS);
    }

    public boolean held() {
        return n() >= LEAST;
    }

    public List<Double> movingRanges() {
        return IntStream.range(1, n())
                .mapToObj(i -> Math.abs(values.get(i) - values.get(i - 1)))
                .toList();
    }

    public boolean signalsAt(int point) {
        return signals.stream().anyMatch(one -> one.point() == point);
    }

    public Optional<Double> lower() {
        return readings.isEmpty() ? Optional.empty() : scale.lower(readings.get(0));
    }

    public Optional<Double> upper() {
        return readings.isEmpty() ? Optional.empty() : scale.upper(readings.get(0));
    }

    /** Values since the last signal of a change: the stretch that an index may speak of. */
    public List<Double> steady() {
        return values.subList(
                signals.stream()
                                .filter(one -> one.sign().change())
                                .mapToInt(Signal::point)
                                .max()
                                .orElse(-1)
                        + 1,
                n());
    }

    /** Why there is no index. */
    public enum NoIndex {
        NO_LIMIT,
        TOO_FEW,
        NOT_STEADY,
        NOTHING_VARIES
    }

    public Optional<NoIndex> noIndex() {
        if (lower().isEmpty() && upper().isEmpty()) {
            return Optional.of(NoIndex.NO_LIMIT);
        }
        if (n() < LEAST) {
            return Optional.of(NoIndex.TOO_FEW);
        }
        if (steady().size() < LEAST) {
            return Optional.of(NoIndex.NOT_STEADY);
        }
        return worked().isEmpty() ? Optional.of(NoIndex.NOTHING_VARIES) : Optional.empty();
    }

    /** Indices of the steady stretch, with their intervals; absent where there is a reason against. */
    public Optional<Working<Capability.Results>> capability() {
        return noIndex().isPresent() ? Optional.empty() : worked();
    }

    private Optional<Working<Capability.Results>> worked() {
        return new Capability()
                .of(capabilityAsked())
                .fold(Optional::of, faults -> Optional.empty(), impossible -> Optional.empty());
    }

    Capability.Inputs capabilityAsked() {
        return new Capability.Inputs(steady(), lower(), upper(), 0.95);
    }

    public Optional<Forecast> forecast() {
        return Forecast.of(this);
    }
}

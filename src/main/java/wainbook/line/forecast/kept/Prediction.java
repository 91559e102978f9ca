package wainbook.line.forecast.kept;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.history.Basis;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;

/**
 * What was said of one vehicle at one time, to be held against what came.
 *
 * @param finish by {@link #LEVELS}, rising; the end of the calendar for what lies beyond it
 * @param promisedBy the end of work on the day it is promised for
 * @param odds that it is finished by the end of the day it is promised for
 * @param ground the thinnest record that the work before it rests on; empty where no work is before it
 * @param byStages what adding up the median times of the stages before it would have said, without a model of the line
 * @param byTakt what counting takts would have said; empty in a works that has set none
 */
public record Prediction(
        String order,
        Instant at,
        List<Instant> finish,
        LocalDate promisedOn,
        Instant promisedBy,
        double odds,
        Optional<Basis.Ground> ground,
        Instant byStages,
        Optional<Instant> byTakt) {

    /** The levels of the quantiles kept. */
    public static final List<Double> LEVELS =
            List.of(0.025, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.975);

    public Prediction {
        finish = List.copyOf(finish);
        if (finish.size() != LEVELS.size()) {
            throw new IllegalArgumentException(finish.size() + " times for " + LEVELS.size() + " levels");
        }
    }

    public Instant quantile(double level) {
        return finish.get(LEVELS.indexOf(level));
    }

    /** Of every vehicle whose last gate is still to be signed: that is what is foretold, and what comes after the line is not. */
    static List<Prediction> of(TheLineNow line, Forecast forecast, Optional<Integer> taktMinutes) {
        var naive = new Naive(line);
        return IntStream.range(0, line.vehicles().size())
                .filter(at -> line.vehicles().get(at).doing() != OnHand.Doing.AFTER)
                .mapToObj(at -> {
                    OnHand vehicle = line.vehicles().get(at);
                    Finish finish = forecast.vehicles().get(at).offTheLine();
                    return new Prediction(
                            vehicle.order(),
                            line.calendar().now(),
                            levels(finish).mapToObj(line.calendar()::at).toList(),
                            vehicle.promisedOn(),
                            line.calendar().at(line.calendar().endOf(vehicle.promisedOn())),
                            finish.by(line.calendar().endOf(vehicle.promisedOn()))
                                    .share(),
                            line.basis(vehicle).stream().map(Basis::ground).max(Comparator.naturalOrder()),
                            naive.byStages(vehicle),
                            taktMinutes.map(takt -> naive.byTakt(vehicle, takt)));
                })
                .toList();
    }

    private static DoubleStream levels(Finish finish) {
        return LEVELS.stream().mapToDouble(finish::quantile);
    }
}

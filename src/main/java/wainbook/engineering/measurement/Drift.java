package wainbook.engineering.measurement;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.TDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * How an instrument's error grows with time: least squares, with the 95 % interval in which the next calibration would lie,
 * ± t(0.975; n − 2) · s · √(1 + 1/n + (x − x̄)²/Sxx). It leaves what is permitted at the earliest where that interval first
 * reaches it, on the side to which the error moves.
 */
public final class Drift implements Calculation<Drift.Inputs, Drift.Results> {

    private static final int LEAST_FOR_A_TREND = 4;
    private static final double UNLIKELY = 0.05;

    /**
     * @param days of the calibrations, counted from any day
     * @param errorPercent as found then, adjustments since the first day taken out
     * @param atDay for which an error is predicted
     */
    public record Inputs(
            @Size(from = 3) List<Double> days,
            @Size(from = 3) List<Double> errorPercent,
            @Domain(above = 0) double permittedPercent,
            Optional<Double> atDay)
            implements Checked {
        public Inputs {
            days = List.copyOf(days);
            errorPercent = List.copyOf(errorPercent);
        }

        @Override
        public List<Fault> faults() {
            if (days.size() != errorPercent.size()) {
                return List.of(Fault.of("errorPercent", "asMany", "days", days.size()));
            }
            return days.stream().distinct().count() > 1 ? List.of() : List.of(Fault.of("days", "allAlike"));
        }
    }

    /**
     * @param slopePerDay in percent a day
     * @param predicted error at the day asked, with its interval
     * @param earliestDay on which the interval reaches what is permitted; absent if it never or always does
     * @param centralDay on which the line itself does
     * @param pSlope chance of so steep a line where there is no trend
     * @param oddsOutside chance that a calibration on the day asked finds it outside what is permitted, on either side
     */
    public record Results(
            double slopePerDay,
            double intercept,
            double residualS,
            double r2,
            Optional<Double> predicted,
            Optional<Double> predictedLower,
            Optional<Double> predictedUpper,
            Optional<Double> earliestDay,
            Optional<Double> centralDay,
            boolean trendShown,
            double slopeError,
            double interceptError,
            double pSlope,
            Optional<Double> oddsOutside) {}

    @Override
    public String name() {
        return "drift";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Least squares", "prediction interval of a straight line, any textbook"),
                Source.seen(
                        "ILAC-G24:2022 / OIML D 10",
                        "review of intervals by control chart or statistics, contents only"),
                Source.practice(
                        "at least four calibrations and a slope with p below 0.05 before a trend is spoken of"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.driftNeverLengthens"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        StraightLine line = StraightLine.through(in.days(), in.errorPercent());
        var t = TDistribution.of(line.freedom());
        double reach = t.inverseSurvivalProbability(0.025) * line.residualS();
        double p = line.slope() == 0 ? 1 : 2 * t.survivalProbability(Math.abs(line.slope()) / line.slopeError());
        boolean trend = line.n() >= LEAST_FOR_A_TREND && p < UNLIKELY;
        Optional<Double> half = in.atDay().map(day -> reach * line.widening(day));
        var results = new Results(
                line.slope(),
                line.intercept(),
                line.residualS(),
                line.r2(),
                in.atDay().map(line::at),
                in.atDay().flatMap(day -> half.map(h -> line.at(day) - h)),
                in.atDay().flatMap(day -> half.map(h -> line.at(day) + h)),
                line.leaving(in.permittedPercent(), reach),
                line.leaving(in.permittedPercent(), 0),
                trend,
                line.slopeError(),
                line.interceptError(),
                p,
                in.atDay().map(day -> outside(in.permittedPercent(), line, t, day)));
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                because(results, line.n()),
                steps(in, line, results),
                sources(),
                cautions()));
    }

    private static double outside(double permitted, StraightLine line, TDistribution t, double day) {
        double scale = line.residualS() * line.widening(day);
        if (scale == 0) {
            return Math.abs(line.at(day)) > permitted ? 1 : 0;
        }
        return t.survivalProbability((permitted - line.at(day)) / scale)
                + t.cumulativeProbability((-permitted - line.at(day)) / scale);
    }

    private static Sentence because(Results found, int n) {
        if (!found.trendShown()) {
            return Sentence.brief("engineering.drift.noTrend", n);
        }
        return found.earliestDay()
                .map(day -> Sentence.brief("engineering.drift.none", n, found.slopePerDay(), day))
                .orElseGet(() -> Sentence.brief("engineering.drift.outside", n, found.slopePerDay()));
    }

    private static List<Step> steps(Inputs in, StraightLine line, Results found) {
        return Stream.of(
                        Optional.of(Step.of(
                                "slope", "b = Sxy / Sxx", line.slope(), "%/d", "%s / %s", line.sxy(), line.sxx())),
                        Optional.of(Step.of(
                                "intercept",
                                "a = ȳ − b · x̄",
                                line.intercept(),
                                "%",
                                "%s − %s · %s",
                                line.meanY(),
                                line.slope(),
                                line.meanX())),
                        Optional.of(Step.of(
                                "residual",
                                "s = √(Σ(y − a − b·x)² / (n − 2))",
                                line.residualS(),
                                "%",
                                "n = %s",
                                line.n())),
                        found.predictedUpper()
                                .map(upper -> Step.of(
                                        "predictedUpper",
                                        "a + b·x + t · s · √(1 + 1/n + (x − x̄)²/Sxx)",
                                        upper,
                                        "%",
                                        "x = %s",
                                        in.atDay().orElseThrow())),
                        found.earliestDay()
                                .map(day -> Step.of(
                                        "earliestDay",
                                        "|a + b·x| + t · s · √(…) = permitted",
                                        day,
                                        "d",
                                        "permitted = %s",
                                        in.permittedPercent())))
                .flatMap(Optional::stream)
                .toList();
    }
}

package wainbook.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.flow.score.Crps;
import wainbook.engineering.flow.score.Quantile;
import wainbook.engineering.statistics.Share;

/**
 * Forecasts that were given as draws, against what came: the mean of their continuous ranked probability scores, and how often the
 * central intervals of 50, 80 and 95 % held the outcome, ends included. The ends of an interval are quantiles of type 7 of the draws;
 * the interval of a share is that of Clopper and Pearson.
 */
public final class ForecastScore implements Calculation<ForecastScore.Inputs, ForecastScore.Results> {

    private static final int MOST_DRAWS = 10_000_000;
    private static final double CONFIDENCE = 0.95;

    /** @param samples the draws of each forecast, in the order of the outcomes; not each needs as many */
    public record Inputs(
            @Size(from = 1) List<Double> outcomes, List<@Size(from = 1, to = 100_000) List<Double>> samples)
            implements Checked {
        public Inputs {
            outcomes = List.copyOf(outcomes);
            samples = samples.stream().map(List::copyOf).toList();
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            if (samples.size() != outcomes.size()) {
                faults.add(Fault.of("samples", "asMany", "outcomes", outcomes.size()));
            }
            if (samples.stream().mapToLong(List::size).sum() > MOST_DRAWS) {
                faults.add(Fault.of("samples", "tooManyDraws", MOST_DRAWS));
            }
            return faults;
        }
    }

    /**
     * @param crps in the unit of the outcomes
     * @param coverage50 share of the outcomes that the interval held, from 0 to 1, with its 95 % interval; so the others
     */
    public record Results(
            double crps,
            double coverage50,
            double coverage50Low,
            double coverage50High,
            double coverage80,
            double coverage80Low,
            double coverage80High,
            double coverage95,
            double coverage95Low,
            double coverage95High) {}

    @Override
    public String name() {
        return "forecast-score";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("T. Gneiting and A. E. Raftery, 2007", "continuous ranked probability score"),
                Source.seen(
                        "Help pages of a statistics library", "quantiles of type 7, credited to Hyndman and Fan, 1996"),
                Source.memory("C. J. Clopper and E. S. Pearson, 1934", "exact interval"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.scoreNeedsAll"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<double[]> sorted = in.samples().stream()
                .map(draws ->
                        draws.stream().mapToDouble(Double::doubleValue).sorted().toArray())
                .toList();
        int n = in.outcomes().size();
        double crps = IntStream.range(0, n)
                .mapToDouble(one -> Crps.plain(sorted.get(one), in.outcomes().get(one)))
                .average()
                .orElseThrow();
        Share half = held(in, sorted, 0.5);
        Share most = held(in, sorted, 0.8);
        Share nearlyAll = held(in, sorted, 0.95);
        Share.Interval ofHalf = half.exact(CONFIDENCE);
        Share.Interval ofMost = most.exact(CONFIDENCE);
        Share.Interval ofNearlyAll = nearlyAll.exact(CONFIDENCE);
        return found(
                new Results(
                        crps,
                        half.rate(),
                        ofHalf.low(),
                        ofHalf.high(),
                        most.rate(),
                        ofMost.low(),
                        ofMost.high(),
                        nearlyAll.rate(),
                        ofNearlyAll.low(),
                        ofNearlyAll.high()),
                Sentence.brief(
                        "engineering.forecast-score.none", n, half.events(), most.events(), nearlyAll.events(), crps),
                Step.of("crps", "Σ|xᵢ − y| / m − ΣΣ|xᵢ − xⱼ| / 2m², mean of all", crps, "", "n = %s", n),
                step("coverage50", half, ofHalf),
                step("coverage80", most, ofMost),
                step("coverage95", nearlyAll, ofNearlyAll));
    }

    private static Share held(Inputs in, List<double[]> sorted, double share) {
        double tail = (1 - share) / 2;
        int hits = (int) IntStream.range(0, sorted.size())
                .filter(one -> Quantile.TYPE_7.of(sorted.get(one), tail)
                                <= in.outcomes().get(one)
                        && in.outcomes().get(one) <= Quantile.TYPE_7.of(sorted.get(one), 1 - tail))
                .count();
        return new Share(hits, sorted.size());
    }

    private static Step step(String name, Share held, Share.Interval interval) {
        return Step.of(
                name,
                "held / all, exact interval",
                held.rate(),
                "",
                "%s / %s, %s to %s",
                held.events(),
                held.pieces(),
                interval.low(),
                interval.high());
    }
}

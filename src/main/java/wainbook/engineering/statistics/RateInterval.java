package wainbook.engineering.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * In which interval a share lies after so many events in so many pieces: by Wilson's score, and exactly by Clopper and Pearson.
 * After no event at all the share is, with the whole confidence to one side, at most 1 − (1 − confidence)^(1/n).
 */
public final class RateInterval implements Calculation<RateInterval.Inputs, RateInterval.Results> {

    private static final int MOST = 100_000_000;

    public record Inputs(
            @Domain(from = 0, to = MOST) int events,
            @Domain(from = 1, to = MOST) int pieces,
            @Preset("0.95") @Domain(above = 0, below = 1) double confidence)
            implements Checked {
        @Override
        public List<Fault> faults() {
            return events <= pieces ? List.of() : List.of(Fault.of("events", "to", (double) pieces));
        }
    }

    /** @param mostIfNone only where there was no event */
    public record Results(
            double rate,
            double scoreLow,
            double scoreHigh,
            double exactLow,
            double exactHigh,
            Optional<Double> mostIfNone) {}

    @Override
    public String name() {
        return "rate-interval";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("E. B. Wilson, 1927", "score interval"),
                Source.memory("C. J. Clopper and E. S. Pearson, 1934", "exact interval"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double n = in.pieces();
        double rate = in.events() / n;
        double tail = (1 - in.confidence()) / 2;
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability(tail);
        double middle = (rate + z * z / (2 * n)) / (1 + z * z / n);
        double half = z * Math.sqrt(rate * (1 - rate) / n + z * z / (4 * n * n)) / (1 + z * z / n);
        double exactLow = in.events() == 0
                ? 0
                : BetaDistribution.of(in.events(), n - in.events() + 1).inverseCumulativeProbability(tail);
        double exactHigh = in.events() == in.pieces()
                ? 1
                : BetaDistribution.of(in.events() + 1, n - in.events()).inverseSurvivalProbability(tail);
        Optional<Double> none =
                in.events() == 0 ? Optional.of(-Math.expm1(Math.log(1 - in.confidence()) / n)) : Optional.empty();
        return found(
                new Results(
                        rate,
                        in.events() == 0 ? 0 : middle - half,
                        in.events() == in.pieces() ? 1 : middle + half,
                        exactLow,
                        exactHigh,
                        none),
                Sentence.brief("engineering.rate-interval.none", rate, exactLow, exactHigh),
                Step.of("rate", "events / pieces", rate, "", "%s / %s", in.events(), in.pieces()),
                Step.of("scoreMiddle", "(r + z²/2n) / (1 + z²/n)", middle, "", "z = %s", z),
                Step.of("scoreHalf", "z · √(r(1 − r)/n + z²/4n²) / (1 + z²/n)", half, "", "z = %s", z));
    }
}

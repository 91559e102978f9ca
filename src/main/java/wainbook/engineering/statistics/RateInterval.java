package wainbook.engineering.statistics;

import java.util.List;
import java.util.Optional;
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
        var share = new Share(in.events(), in.pieces());
        double rate = share.rate();
        double z = Share.z(in.confidence());
        Share.Interval score = share.score(in.confidence());
        Share.Interval exact = share.exact(in.confidence());
        Optional<Double> none = in.events() == 0
                ? Optional.of(-Math.expm1(Math.log(1 - in.confidence()) / in.pieces()))
                : Optional.empty();
        return found(
                new Results(rate, score.low(), score.high(), exact.low(), exact.high(), none),
                Sentence.brief("engineering.rate-interval.none", rate, exact.low(), exact.high()),
                Step.of("rate", "events / pieces", rate, "", "%s / %s", in.events(), in.pieces()),
                Step.of("scoreMiddle", "(r + z²/2n) / (1 + z²/n)", share.scoreMiddle(z), "", "z = %s", z),
                Step.of("scoreHalf", "z · √(r(1 − r)/n + z²/4n²) / (1 + z²/n)", share.scoreHalf(z), "", "z = %s", z));
    }
}

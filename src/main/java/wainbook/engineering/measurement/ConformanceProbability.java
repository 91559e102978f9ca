package wainbook.engineering.measurement;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Chance that what was measured lies within its limits, the value normal about the reading with the standard uncertainty u:
 * p = Φ((U − x)/u) − Φ((L − x)/u) (JCGM 106:2012).
 */
public final class ConformanceProbability
        implements Calculation<ConformanceProbability.Inputs, ConformanceProbability.Results> {

    /** @param standardUncertainty k = 1 */
    public record Inputs(
            double reading,
            @Domain(above = 0) double standardUncertainty,
            Optional<Double> lower,
            Optional<Double> upper)
            implements Checked {

        @Override
        public List<Fault> faults() {
            if (lower.isEmpty() && upper.isEmpty()) {
                return List.of(Fault.of("lower", "missing"), Fault.of("upper", "missing"));
            }
            return lower.isPresent() && upper.isPresent() && lower.get() >= upper.get()
                    ? List.of(Fault.of("upper", "above", lower.get()))
                    : List.of();
        }
    }

    public record Results(double probability) {}

    @Override
    public String name() {
        return "conformance-probability";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("JCGM 106:2012", "7, conformance probability of a normal distribution"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        var around = NormalDistribution.of(in.reading(), in.standardUncertainty());
        double below = in.lower().map(around::cumulativeProbability).orElse(0.0);
        double above = in.upper().map(around::survivalProbability).orElse(0.0);
        double probability = Math.max(0, 1 - below - above);
        return found(
                new Results(probability),
                Sentence.brief("engineering.conformance-probability.none", probability),
                Step.of(
                        "chanceBelow",
                        "Φ((L − x) / u)",
                        below,
                        "",
                        "x = %s, u = %s",
                        in.reading(),
                        in.standardUncertainty()),
                Step.of(
                        "chanceAbove",
                        "1 − Φ((U − x) / u)",
                        above,
                        "",
                        "x = %s, u = %s",
                        in.reading(),
                        in.standardUncertainty()));
    }
}

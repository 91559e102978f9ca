package wainbook.engineering.measurement;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Combined uncertainty of independent contributions, u = √Σu², its effective degrees of freedom u⁴ / Σ(uᵢ⁴/νᵢ), cut to a whole
 * number before the look-up, and the coverage factor t for the confidence wanted (JCGM 100:2008, G.4).
 */
public final class CoverageFactor implements Calculation<CoverageFactor.Inputs, CoverageFactor.Results> {

    /** @param degreesOfFreedom absent where they are so many that they do not count */
    public record Contribution(
            @Domain(from = 0) double standardUncertainty, Optional<@Domain(from = 1) Double> degreesOfFreedom) {}

    public record Inputs(
            @Size(from = 1, to = 100) List<Contribution> contributions,
            @Preset("0.95") @Domain(above = 0, below = 1) double confidence) {
        public Inputs {
            contributions = List.copyOf(contributions);
        }
    }

    /** @param degreesOfFreedom effective, not cut; absent where every contribution is certain */
    public record Results(
            double combined, Optional<Double> degreesOfFreedom, double coverageFactor, double expandedUncertainty) {}

    @Override
    public String name() {
        return "coverage-factor";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen("JCGM 100:2008", "H.1 and G.4, as open-source tests reproduce them"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double combined = Math.sqrt(in.contributions().stream()
                .mapToDouble(one -> one.standardUncertainty() * one.standardUncertainty())
                .sum());
        if (combined == 0) {
            return Answer.impossible("nothing-uncertain");
        }
        double poor = in.contributions().stream()
                .filter(one -> one.degreesOfFreedom().isPresent())
                .mapToDouble(one -> Math.pow(one.standardUncertainty() / combined, 4)
                        / one.degreesOfFreedom().orElseThrow())
                .sum();
        Optional<Double> degrees = Optional.of(1 / poor).filter(Double::isFinite);
        double tail = (1 - in.confidence()) / 2;
        double factor = degrees.map(known -> TDistribution.of(Math.max(1, Math.floor(Plain.compared(known))))
                        .inverseSurvivalProbability(tail))
                .orElseGet(() -> NormalDistribution.of(0, 1).inverseSurvivalProbability(tail));
        return found(
                new Results(combined, degrees, factor, factor * combined),
                Sentence.brief("engineering.coverage-factor.none", factor * combined, factor),
                Step.of(
                        "combinedUncertainty",
                        "u = √Σu²",
                        combined,
                        "",
                        "%s contributions",
                        in.contributions().size()),
                Step.of(
                        "coverage",
                        "t(ν, p), ν = u⁴ / Σ(uᵢ⁴/νᵢ)",
                        factor,
                        "",
                        "ν = %s",
                        degrees.<Object>map(known -> known).orElse("∞")));
    }
}

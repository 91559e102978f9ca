package wainbook.engineering.measurement;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.statistics.Sample;

/** Whether readings scatter less than they can: (n − 1) s² / σ² below the χ² that chance undercuts so rarely. */
public final class TooLittleScatter implements Calculation<TooLittleScatter.Inputs, TooLittleScatter.Results> {

    /** @param usualS standard deviation that such readings have had so far */
    public record Inputs(
            @Size(from = 3) List<Double> values,
            @Domain(above = 0) double usualS,
            @Preset("0.01") @Domain(above = 0, below = 1) double rarely) {
        public Inputs {
            values = List.copyOf(values);
        }
    }

    public record Results(double s, double statistic, double threshold, boolean tooLittle) {}

    @Override
    public String name() {
        return "too-little-scatter";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("χ² test of a variance", "any textbook"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.figuresAccuseNobody"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double s = new Sample(in.values()).s();
        double freedom = in.values().size() - 1.0;
        double statistic = freedom * (s / in.usualS()) * (s / in.usualS());
        double threshold = ChiSquaredDistribution.of(freedom).inverseCumulativeProbability(in.rarely());
        boolean tooLittle = statistic < threshold;
        return found(
                new Results(s, statistic, threshold, tooLittle),
                Sentence.brief("engineering.too-little-scatter." + (tooLittle ? "little" : "usual"), s, in.usualS()),
                Step.of("scatterRatio", "(n − 1) · s² / σ²", statistic, "", "%s · %s² / %s²", freedom, s, in.usualS()),
                Step.of("scatterThreshold", "χ²(n − 1)", threshold, "", "p = %s", in.rarely()));
    }
}

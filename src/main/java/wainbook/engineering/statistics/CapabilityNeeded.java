package wainbook.engineering.statistics;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * What index a sample has to show, so that the process has at least the one wanted with this confidence to one side: for Ppk
 * the x that solves x − z √(1/(9n) + x²/(2(n − 1))) = wanted, for Pp wanted / √(χ² / (n − 1)).
 */
public final class CapabilityNeeded implements Calculation<CapabilityNeeded.Inputs, CapabilityNeeded.Results> {

    public record Inputs(
            @Domain(from = 10, to = 1_000_000) int n,
            @Domain(above = 0, to = 1000) double wanted,
            @Preset("0.95") @Domain(from = 0.5, to = 0.99) double confidence) {}

    public record Results(double neededPpk, double neededPp) {}

    @Override
    public String name() {
        return "capability-needed";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen(
                        "R. N. Rodriguez, J. Quality Technology 24(4), 1992", "interval of Cpk, as an excerpt has it"),
                Source.seen("A statistics package’s page of methods", "interval of Cp by χ²"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.indexNeedsChart"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double freedom = in.n() - 1.0;
        double z = NormalDistribution.of(0, 1).inverseCumulativeProbability(in.confidence());
        double steep = 1 - z * z / (2 * freedom);
        double constant = in.wanted() * in.wanted() - z * z / (9.0 * in.n());
        double ppk = (in.wanted() + Math.sqrt(in.wanted() * in.wanted() - steep * constant)) / steep;
        double chi = ChiSquaredDistribution.of(freedom).inverseSurvivalProbability(in.confidence());
        double pp = in.wanted() / Math.sqrt(chi / freedom);
        return found(
                new Results(ppk, pp),
                Sentence.brief("engineering.capability-needed.none", in.n(), ppk, in.wanted()),
                Step.of(
                        "neededPpk",
                        "x − z · √(1/(9n) + x²/(2(n − 1))) = wanted",
                        ppk,
                        "",
                        "n = %s, z = %s",
                        in.n(),
                        z),
                Step.of("neededPp", "wanted / √(χ² / (n − 1))", pp, "", "%s / √(%s / %s)", in.wanted(), chi, freedom));
    }
}

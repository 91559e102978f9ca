package wainbook.engineering.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
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
 * Defects a unit, the first-pass share that goes with them if they fall independently, e^−DPU, and defects in a million
 * opportunities with the z of that tail. Nothing is added to z for a drift that nobody saw.
 */
public final class DefectRate implements Calculation<DefectRate.Inputs, DefectRate.Results> {

    private static final double TAIL = 0.025;
    private static final double MILLION = 1e6;
    private static final int MOST = 1_000_000;

    /** @param opportunities for a defect in each unit */
    public record Inputs(
            @Domain(from = 0, to = MOST) int defects,
            @Domain(from = 1, to = MOST) int units,
            @Domain(from = 1, to = MOST) int opportunities)
            implements Checked {
        @Override
        public List<Fault> faults() {
            double most = (double) units * opportunities;
            return defects <= most ? List.of() : List.of(Fault.of("defects", "to", most));
        }
    }

    /**
     * @param z absent where there is no defect, or nothing else
     * @param perUnitLow and {@code perUnitHigh}: exact 95 % interval of a Poisson rate, χ²(0.025; 2d) / 2n and
     *     χ²(0.975; 2d + 2) / 2n
     */
    public record Results(
            double perUnit,
            double firstPassShare,
            double perMillion,
            Optional<Double> z,
            double perUnitLow,
            double perUnitHigh) {}

    @Override
    public String name() {
        return "defect-rate";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.practice("defects a unit and in a million opportunities"),
                Source.memory("Poisson", "e^−DPU"),
                Source.memory("F. Garwood, Biometrika 28, 1936", "exact interval of a Poisson rate"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double perUnit = in.defects() / (double) in.units();
        double share = perUnit / in.opportunities();
        Optional<Double> z = share > 0 && share < 1
                ? Optional.of(NormalDistribution.of(0, 1).inverseSurvivalProbability(share))
                : Optional.empty();
        return found(
                new Results(
                        perUnit,
                        Math.exp(-perUnit),
                        share * MILLION,
                        z,
                        in.defects() == 0
                                ? 0
                                : ChiSquaredDistribution.of(2.0 * in.defects()).inverseCumulativeProbability(TAIL)
                                        / (2 * in.units()),
                        ChiSquaredDistribution.of(2.0 * in.defects() + 2).inverseSurvivalProbability(TAIL)
                                / (2 * in.units())),
                Sentence.brief("engineering.defect-rate.none", perUnit, share * MILLION),
                Step.of("perUnit", "DPU = defects / units", perUnit, "", "%s / %s", in.defects(), in.units()),
                Step.of(
                        "perMillion",
                        "DPMO = 10⁶ · DPU / opportunities",
                        share * MILLION,
                        "",
                        "10⁶ · %s / %s",
                        perUnit,
                        in.opportunities()));
    }
}

package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Limit;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Insulation resistance of parts that are joined: R∥ = 1 / Σ(1/Ri). Parts that are each well can fail together, which is
 * what the shares of the leakage are for. UN R100 5.1.3.2 lets a circuit be shown by calculation.
 */
public final class IsolationCombined implements Calculation<IsolationCombined.Inputs, IsolationCombined.Results> {

    /**
     * @param accuracyPercent expanded uncertainty, k = 2, of each part's value
     * @param sameTester one tester measured all, so that its errors go the same way: the safe assumption
     */
    public record Inputs(
            @Size(from = 1) List<@Domain(above = 0) Double> partsOhm,
            @Domain(above = 0) double workingV,
            @Domain(above = 0) double limitOhmPerVolt,
            @Preset("0") @Domain(from = 0) double accuracyPercent,
            @Preset("true") boolean sameTester) {
        public Inputs {
            partsOhm = List.copyOf(partsOhm);
        }

        public Inputs(List<Double> partsOhm, double workingV, double limitOhmPerVolt) {
            this(partsOhm, workingV, limitOhmPerVolt, 0, true);
        }
    }

    /**
     * @param shares each part's share of the leakage current, in the order of the parts; together 1
     * @param budgetOhm what each part must reach so that the whole keeps its limit whichever parts are joined: as many times
     *     the limit as there are parts
     * @param belowBudget parts that take more than their share, counted from 1: no failure of the whole, but a warning
     */
    public record Results(
            double parallelOhm,
            double ohmPerVolt,
            double limitOhm,
            List<Double> shares,
            double expandedUncertaintyOhm,
            double budgetOhm,
            List<Integer> belowBudget) {}

    @Override
    public String name() {
        return "isolation-combined";
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.CONDUCTANCES, Origins.ISOLATION_LIMITS, Origins.WORKING_VOLTAGE, Origins.GUARD_BAND);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double conductanceS = in.partsOhm().stream().mapToDouble(ohm -> 1 / ohm).sum();
        double parallelOhm = 1 / conductanceS;
        List<Double> shares =
                in.partsOhm().stream().map(ohm -> parallelOhm / ohm).toList();
        double limitOhm = in.limitOhmPerVolt() * in.workingV();
        double ohmPerVolt = parallelOhm / in.workingV();
        double budgetOhm = in.partsOhm().size() * limitOhm;
        List<Integer> belowBudget = IntStream.range(0, in.partsOhm().size())
                .filter(part -> Plain.compared(in.partsOhm().get(part)) < Plain.compared(budgetOhm))
                .mapToObj(part -> part + 1)
                .toList();
        double together = in.sameTester()
                ? 1
                : Math.sqrt(shares.stream().mapToDouble(share -> share * share).sum());
        double uncertaintyOhm = in.accuracyPercent() / 100 * parallelOhm * together;
        Decision decision = Limit.atLeast(limitOhm).judge(parallelOhm, uncertaintyOhm, "ohm");
        return Answer.worked(new Working<>(
                new Results(parallelOhm, ohmPerVolt, limitOhm, shares, uncertaintyOhm, budgetOhm, belowBudget),
                Optional.of(decision),
                decision.because(
                        name(),
                        Plain.beside(limitOhm, parallelOhm),
                        limitOhm,
                        in.partsOhm().size(),
                        uncertaintyOhm),
                List.of(
                        Step.of("parallel", "R∥ = 1 / Σ(1/Ri)", parallelOhm, "ohm", "1 / %s", conductanceS),
                        Step.of(
                                "uncertainty",
                                "U = accuracy · R∥, or · √Σ share² where testers differ",
                                uncertaintyOhm,
                                "ohm",
                                "%s %% · %s · %s",
                                in.accuracyPercent(),
                                parallelOhm,
                                together),
                        Step.of("perVolt", "R∥ / Uw", ohmPerVolt, "ohm/V", "%s / %s", parallelOhm, in.workingV()),
                        Step.of("limit", "limit · Uw", limitOhm, "ohm", "%s · %s", in.limitOhmPerVolt(), in.workingV()),
                        Step.of(
                                "budget",
                                "n · limit",
                                budgetOhm,
                                "ohm",
                                "%s · %s",
                                in.partsOhm().size(),
                                limitOhm)),
                sources(),
                cautions()));
    }
}

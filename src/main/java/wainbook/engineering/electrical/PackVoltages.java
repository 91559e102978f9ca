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
import wainbook.engineering.Verdict;
import wainbook.engineering.Working;

/**
 * Whether packs may be joined: each as measured against what its own management reports, and the greatest difference between
 * two of them within the maker's window. 20 V over 0.05 Ω drive 400 A.
 */
public final class PackVoltages implements Calculation<PackVoltages.Inputs, PackVoltages.Results> {

    /**
     * @param measuredV at each pack's terminals
     * @param reportedV by each pack's management, in the same order
     * @param windowV how far apart packs may be that are joined
     * @param agreementPercent how far a pack's own report may lie from the meter, of the measured voltage
     * @param accuracyPercent expanded uncertainty, k = 2, of the one meter that read all: of a difference it makes that share
     */
    public record Inputs(
            @Size(from = 1) List<@Domain(above = 0) Double> measuredV,
            @Size(from = 1) List<@Domain(above = 0) Double> reportedV,
            @Domain(above = 0) double windowV,
            @Preset("1") @Domain(above = 0) double agreementPercent,
            @Preset("0") @Domain(from = 0) double accuracyPercent) {
        public Inputs {
            measuredV = List.copyOf(measuredV);
            reportedV = List.copyOf(reportedV);
        }
    }

    /** @param worstPack which pack's own report lies farthest from the meter, counted from 1 */
    public record Results(double differenceV, double worstAgreementPercent, int worstPack, boolean agrees) {}

    @Override
    public String name() {
        return "pack-voltages";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.practice("1 % between meter and pack, 2 V between packs; the pack maker’s window comes first"),
                Origins.GUARD_BAND);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.PACK_STAYS_LIVE, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.measuredV().size() != in.reportedV().size()) {
            return Answer.impossible(
                    "packs-not-paired", in.measuredV().size(), in.reportedV().size());
        }
        double highestV =
                in.measuredV().stream().mapToDouble(volt -> volt).max().orElseThrow();
        double lowestV = in.measuredV().stream().mapToDouble(volt -> volt).min().orElseThrow();
        double differenceV = highestV - lowestV;
        int worst = IntStream.range(0, in.measuredV().size())
                .reduce(0, (one, other) -> off(in, other) > off(in, one) ? other : one);
        double worstPercent = off(in, worst);
        boolean agrees = Plain.compared(worstPercent) <= Plain.compared(in.agreementPercent());
        double uncertaintyV = in.accuracyPercent() / 100 * differenceV;
        Decision window = Limit.atMost(in.windowV()).judge(differenceV, uncertaintyV, "V");
        Decision decision = agrees ? window : window.as(Verdict.FAIL);
        return Answer.worked(new Working<>(
                new Results(differenceV, worstPercent, worst + 1, agrees),
                Optional.of(decision),
                decision.because(
                        name(),
                        Plain.beside(in.windowV(), differenceV),
                        in.windowV(),
                        Plain.beside(in.agreementPercent(), worstPercent),
                        in.agreementPercent(),
                        uncertaintyV),
                List.of(
                        Step.of("difference", "ΔU = Umax − Umin", differenceV, "V", "%s − %s", highestV, lowestV),
                        Step.of(
                                "agreement",
                                "|U − U_reported| / U",
                                worstPercent,
                                "%",
                                "|%s − %s| / %s",
                                in.measuredV().get(worst),
                                in.reportedV().get(worst),
                                in.measuredV().get(worst))),
                sources(),
                cautions()));
    }

    private static double off(Inputs in, int pack) {
        double measuredV = in.measuredV().get(pack);
        return Math.abs(measuredV - in.reportedV().get(pack)) / measuredV * 100;
    }
}

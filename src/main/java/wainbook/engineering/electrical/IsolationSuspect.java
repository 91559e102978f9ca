package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Insulation resistance of the one part that was not measured: R = 1 / (1/R_whole − Σ(1/Ri)). */
public final class IsolationSuspect implements Calculation<IsolationSuspect.Inputs, IsolationSuspect.Results> {

    public record Inputs(
            @Domain(above = 0) double wholeOhm,
            @Size(from = 1) List<@Domain(above = 0) Double> othersOhm) {
        public Inputs {
            othersOhm = List.copyOf(othersOhm);
        }
    }

    /** @param share of the leakage current that goes through the suspect */
    public record Results(double suspectOhm, double parallelOhm, double share) {}

    @Override
    public String name() {
        return "isolation-suspect";
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.CONDUCTANCES);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double othersS = in.othersOhm().stream().mapToDouble(ohm -> 1 / ohm).sum();
        double othersOhm = 1 / othersS;
        if (Plain.compared(othersOhm) <= Plain.compared(in.wholeOhm())) {
            return Answer.impossible("others-below-whole", othersOhm, in.wholeOhm());
        }
        double suspectOhm = 1 / (1 / in.wholeOhm() - othersS);
        return found(
                new Results(suspectOhm, othersOhm, in.wholeOhm() / suspectOhm),
                Sentence.brief("engineering.isolation-suspect.none", suspectOhm),
                Step.of("othersParallel", "1 / Σ(1/Ri)", othersOhm, "ohm", "1 / %s", othersS),
                Step.of(
                        "suspect",
                        "R = 1 / (1/R_whole − Σ(1/Ri))",
                        suspectOhm,
                        "ohm",
                        "1 / (1/%s − 1/%s)",
                        in.wholeOhm(),
                        othersOhm));
    }
}

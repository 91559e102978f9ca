package wainbook.engineering.measurement;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Agreement of two people on yes and no beyond that by chance: κ = (po − pe) / (1 − pe). */
public final class Agreement implements Calculation<Agreement.Inputs, Agreement.Results> {

    /** Counts of pieces. */
    public record Inputs(
            @Domain(from = 0) int bothYes,
            @Domain(from = 0) int onlyFirstYes,
            @Domain(from = 0) int onlySecondYes,
            @Domain(from = 0) int bothNo) {}

    public record Results(double observed, double byChance, double kappa) {}

    @Override
    public String name() {
        return "agreement";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("A statistics package’s help on kappa", "0.75 and above is good, credited to AIAG"),
                Source.memory("J. Cohen, 1960", "kappa"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double all = (double) in.bothYes() + in.onlyFirstYes() + in.onlySecondYes() + in.bothNo();
        double firstYes = (in.bothYes() + (double) in.onlyFirstYes()) / all;
        double secondYes = (in.bothYes() + (double) in.onlySecondYes()) / all;
        double byChance = firstYes * secondYes + (1 - firstYes) * (1 - secondYes);
        if (all == 0 || byChance == 1) {
            return Answer.impossible("nothing-to-tell-apart");
        }
        double observed = ((double) in.bothYes() + in.bothNo()) / all;
        double kappa = (observed - byChance) / (1 - byChance);
        return found(
                new Results(observed, byChance, kappa),
                Sentence.brief("engineering.agreement.none", kappa, observed),
                Step.of(
                        "agreementByChance",
                        "pe = p1 · p2 + (1 − p1)(1 − p2)",
                        byChance,
                        "",
                        "p1 = %s, p2 = %s",
                        firstYes,
                        secondYes),
                Step.of(
                        "kappa",
                        "κ = (po − pe) / (1 − pe)",
                        kappa,
                        "",
                        "(%s − %s) / (1 − %s)",
                        observed,
                        byChance,
                        byChance));
    }
}

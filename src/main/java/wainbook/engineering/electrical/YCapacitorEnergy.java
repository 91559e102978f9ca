package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
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
 * Energy in all capacitors between the rails and the chassis, taken at the full voltage as if one rail lay on the chassis:
 * E = ½ · ΣC · U². Every part that is added adds to it.
 */
public final class YCapacitorEnergy implements Calculation<YCapacitorEnergy.Inputs, YCapacitorEnergy.Results> {

    public record Inputs(
            @Size(from = 1) List<@Domain(above = 0) Double> capacitancesF,
            @Domain(above = 0) double voltageV,
            @Preset("0.2") @Domain(above = 0) double limitJ) {
        public Inputs {
            capacitancesF = List.copyOf(capacitancesF);
        }
    }

    /** @param largestTotalF the total that would just reach the limit */
    public record Results(double energyJ, double largestTotalF) {}

    @Override
    public String name() {
        return "y-capacitor-energy";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen("ISO 6469-4:2015", "5.2.3, less than 0.2 J"), Origins.DECAY);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double totalF =
                in.capacitancesF().stream().mapToDouble(Double::doubleValue).sum();
        double energyJ = Capacitor.energyJ(totalF, in.voltageV());
        double largestTotalF = 2 * in.limitJ() / (in.voltageV() * in.voltageV());
        Decision decision = Limit.below(in.limitJ()).judge(energyJ, 0, "J");
        return Answer.worked(new Working<>(
                new Results(energyJ, largestTotalF),
                Optional.of(decision),
                decision.because(name(), Plain.beside(in.limitJ(), energyJ), in.limitJ()),
                List.of(
                        Capacitor.step("energyOfAll", totalF, in.voltageV()),
                        Step.of(
                                "largestTotal",
                                "C = 2 · E / U²",
                                largestTotalF,
                                "F",
                                "2 · %s / %s²",
                                in.limitJ(),
                                in.voltageV())),
                sources(),
                cautions()));
    }
}

package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Charging the bus through a resistor before the main contactor closes: t = −R C ln(1 − k) to the ratio k of the supply. The
 * resistor takes ½ C U² each time, whatever its value.
 */
public final class Precharge implements Calculation<Precharge.Inputs, Precharge.Results> {

    /** @param ratio of the supply voltage that is to be reached; 1 is never reached */
    public record Inputs(
            @Domain(above = 0) double capacitanceF,
            @Domain(above = 0) double resistanceOhm,
            @Domain(above = 0) double supplyV,
            @Domain(from = 0, below = 1) double ratio) {}

    public record Results(double timeS, double tauS, double peakA, double energyJ) {}

    @Override
    public String name() {
        return "precharge";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Capacitor with resistor", "U(t) = U0 · (1 − e^(−t/RC)), E = ½ C U²"),
                Source.practice("95 % of the supply before the main contactor closes"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.LIVE_WORK, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double tauS = in.resistanceOhm() * in.capacitanceF();
        double timeS = -tauS * Math.log1p(-in.ratio());
        double peakA = in.supplyV() / in.resistanceOhm();
        double energyJ = Capacitor.energyJ(in.capacitanceF(), in.supplyV());
        return Answer.worked(new Working<>(
                new Results(timeS, tauS, peakA, energyJ),
                Optional.empty(),
                Sentence.brief("engineering.precharge.none", timeS, in.ratio()),
                List.of(
                        Step.of("tau", "τ = R · C", tauS, "s", "%s · %s", in.resistanceOhm(), in.capacitanceF()),
                        Step.of("time", "t = −τ · ln(1 − k)", timeS, "s", "−%s · ln(1 − %s)", tauS, in.ratio()),
                        Step.of("peak", "I = U / R", peakA, "A", "%s / %s", in.supplyV(), in.resistanceOhm()),
                        Capacitor.step("energyInResistor", in.capacitanceF(), in.supplyV())),
                sources(),
                cautions()));
    }
}

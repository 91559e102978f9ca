package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * What a precharge that did not go as reckoned tells. Stuck at a share k of the supply: a load of R k / (1 − k) is switched on.
 * Read on its way after a time t: the bus has C = −t / (R ln(1 − k)).
 */
public final class PrechargeCheck implements Calculation<PrechargeCheck.Inputs, PrechargeCheck.Results> {

    /**
     * @param reachedV where the bus stands still, or where it stood after the time given
     * @param afterS absent if it stands still
     * @param ratio of the supply that has to be reached
     */
    public record Inputs(
            @Domain(above = 0) double supplyV,
            @Domain(above = 0) double resistanceOhm,
            @Domain(above = 0) double reachedV,
            Optional<@Domain(above = 0) Double> afterS,
            @Preset("0.95") @Domain(above = 0, below = 1) double ratio) {}

    /** @param leastLoadOhm a load must not be below this, or the ratio is never reached */
    public record Results(
            double reachedRatio,
            Optional<Double> loadOhm,
            double leastLoadOhm,
            Optional<Double> tauS,
            Optional<Double> capacitanceF) {}

    @Override
    public String name() {
        return "precharge-check";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Capacitor with resistor", "U(t) = U0 · (1 − e^(−t/RC)); divider of two resistors"),
                Source.practice("95 % of the supply before the main contactor closes"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.LIVE_WORK, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (Plain.compared(in.reachedV()) >= Plain.compared(in.supplyV())) {
            return Answer.impossible("supply-reached", in.reachedV(), in.supplyV());
        }
        double reached = in.reachedV() / in.supplyV();
        double leastOhm = load(in.resistanceOhm(), in.ratio());
        return in.afterS()
                .map(afterS -> underWay(in, reached, leastOhm, afterS))
                .orElseGet(() -> stuck(in, reached, leastOhm));
    }

    private Answer<Results> underWay(Inputs in, double reached, double leastOhm, double afterS) {
        double tauS = -afterS / Math.log1p(-reached);
        double capacitanceF = tauS / in.resistanceOhm();
        return found(
                new Results(reached, Optional.empty(), leastOhm, Optional.of(tauS), Optional.of(capacitanceF)),
                Sentence.brief("engineering.precharge-check.underWay", capacitanceF, reached),
                Step.of("tau", "τ = −t / ln(1 − k)", tauS, "s", "−%s / ln(1 − %s)", afterS, reached),
                Step.of("busCapacitance", "C = τ / R", capacitanceF, "F", "%s / %s", tauS, in.resistanceOhm()));
    }

    private Answer<Results> stuck(Inputs in, double reached, double leastOhm) {
        double loadOhm = load(in.resistanceOhm(), reached);
        return found(
                new Results(reached, Optional.of(loadOhm), leastOhm, Optional.empty(), Optional.empty()),
                Sentence.brief("engineering.precharge-check.stuck", reached, loadOhm, leastOhm),
                Step.of(
                        "load",
                        "R_L = R · k / (1 − k)",
                        loadOhm,
                        "ohm",
                        "%s · %s / (1 − %s)",
                        in.resistanceOhm(),
                        reached,
                        reached));
    }

    private static double load(double resistanceOhm, double ratio) {
        return resistanceOhm * ratio / (1 - ratio);
    }
}

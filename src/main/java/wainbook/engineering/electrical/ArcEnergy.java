package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * First estimate of the heat of a direct-current arc at a distance, by the greatest power that its source can give it:
 * E = 0.01 · U · I_arc · t / D² in cal/cm² with D in centimetres and I_arc half the short-circuit current (Doan 2010).
 */
public final class ArcEnergy implements Calculation<ArcEnergy.Inputs, ArcEnergy.Results> {

    /** A second-degree burn begins here. */
    private static final double BURN_CAL_PER_CM2 = 1.2;

    /**
     * @param shortCircuitA bolted
     * @param arcS until the arc is cut off, or the person is away
     * @param distanceMm from the arc to the body
     */
    public record Inputs(
            @Domain(above = 0) double voltageV,
            @Domain(above = 0) double shortCircuitA,
            @Domain(above = 0) double arcS,
            @Domain(above = 0) double distanceMm) {}

    public record Results(double energyCalPerCm2, double arcA, double burnDistanceMm) {}

    @Override
    public String name() {
        return "arc-energy";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory(
                "D. R. Doan, arc flash of DC systems, 2010", "greatest power; 1.2 cal/cm² as limit of a burn"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.arcIsAnEstimate"), Origins.LIVE_WORK, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double arcA = in.shortCircuitA() / 2;
        double distanceCm = in.distanceMm() / 10;
        double atOneCm = 0.01 * in.voltageV() * arcA * in.arcS();
        double energy = atOneCm / (distanceCm * distanceCm);
        double burnMm = 10 * Math.sqrt(atOneCm / BURN_CAL_PER_CM2);
        return found(
                new Results(energy, arcA, burnMm),
                Sentence.brief("engineering.arc-energy.none", energy, in.distanceMm(), BURN_CAL_PER_CM2, burnMm),
                Step.of("arcCurrent", "I_arc = I_short / 2", arcA, "A", "%s / 2", in.shortCircuitA()),
                Step.of(
                        "arcHeat",
                        "E = 0.01 · U · I_arc · t / D²",
                        energy,
                        "cal/cm²",
                        "0.01 · %s · %s · %s / %s²",
                        in.voltageV(),
                        arcA,
                        in.arcS(),
                        distanceCm));
    }
}

package wainbook.engineering.tightening;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.ExactlyOne;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Preload of a metric bolt from its torque, or both from how far its yield strength is used, torsion counted (VDI 2230-1):
 * M = F (0.16 P + 0.58 d2 µ_th + µ_head Dkm / 2) and F = As ν Rp / √(1 + 3 [1.5 (d2/d0) (P/(π d2) + 1.155 µ_th)]²).
 */
public final class Preload implements Calculation<Preload.Inputs, Preload.Results> {

    /**
     * @param utilisation ν, the share of the yield strength that is used; 0.9 in the usual tables
     * @param bearingMeanMm Dkm, the mean of bearing face diameter and hole
     */
    @ExactlyOne({"torqueNm", "utilisation"})
    public record Inputs(
            Optional<@Domain(above = 0) Double> torqueNm,
            Optional<@Domain(above = 0, to = 1) Double> utilisation,
            @Domain(above = 0) double diameterMm,
            @Domain(above = 0) double pitchMm,
            @Domain(above = 0) double yieldMPa,
            @Domain(above = 0) double threadFriction,
            @Domain(above = 0) double headFriction,
            @Domain(above = 0) double bearingMeanMm)
            implements Checked {

        @Override
        public List<Fault> faults() {
            double mostMm = diameterMm / IsoThread.MINOR_DEPTH;
            return pitchMm < mostMm ? List.of() : List.of(Fault.of("pitchMm", "below", mostMm));
        }

        IsoThread thread() {
            return new IsoThread(diameterMm, pitchMm);
        }
    }

    public record Results(
            double preloadN,
            double torqueNm,
            double stressAreaMm2,
            double pitchDiameterMm,
            double minorDiameterMm,
            double utilisation) {}

    @Override
    public String name() {
        return "preload";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("VDI 2230-1", "assembly preload and tightening torque, clause not seen"),
                Source.memory("ISO 68-1 and ISO 724", "pitch and minor diameter"));
    }

    @Override
    public List<Sentence> cautions() {
        return Cautions.TORQUE;
    }

    @Override
    public Answer<Results> work(Inputs in) {
        IsoThread thread = in.thread();
        double armMm = thread.armMm(in.threadFriction()) + in.headFriction() * in.bearingMeanMm() / 2;
        double atYieldN = thread.stressAreaMm2() * in.yieldMPa() / thread.torsion(in.threadFriction());
        double preloadN = in.torqueNm()
                .map(torqueNm -> torqueNm * 1000 / armMm)
                .orElseGet(() -> in.utilisation().orElseThrow() * atYieldN);
        double torqueNm = in.torqueNm().orElse(preloadN * armMm / 1000);
        double utilisation = in.utilisation().orElse(preloadN / atYieldN);
        return Answer.worked(new Working<>(
                new Results(
                        preloadN,
                        torqueNm,
                        thread.stressAreaMm2(),
                        thread.pitchDiameterMm(),
                        thread.minorDiameterMm(),
                        utilisation),
                Optional.empty(),
                Sentence.brief("engineering.preload.none", torqueNm, preloadN, utilisation),
                List.of(
                        Step.of(
                                "stressArea",
                                "As = π/4 · ((d2 + d3)/2)²",
                                thread.stressAreaMm2(),
                                "mm²",
                                "π/4 · ((%s + %s)/2)²",
                                thread.pitchDiameterMm(),
                                thread.minorDiameterMm()),
                        Step.of(
                                "arm",
                                "0.16 · P + 0.58 · d2 · µ_th + µ_head · Dkm / 2",
                                armMm,
                                "mm",
                                "0.16 · %s + 0.58 · %s · %s + %s · %s / 2",
                                in.pitchMm(),
                                thread.pitchDiameterMm(),
                                in.threadFriction(),
                                in.headFriction(),
                                in.bearingMeanMm()),
                        Step.of(
                                "preloadAtYield",
                                "As · Rp / √(1 + 3 · [1.5 · (d2/d0) · (P/(π·d2) + 1.155·µ_th)]²)",
                                atYieldN,
                                "N",
                                "%s · %s / %s",
                                thread.stressAreaMm2(),
                                in.yieldMPa(),
                                thread.torsion(in.threadFriction())),
                        Step.of("torque", "M = F · arm", torqueNm, "Nm", "%s · %s / 1000", preloadN, armMm)),
                sources(),
                cautions()));
    }
}

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
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Time a capacitor needs to fall to a voltage through a resistor: t = R C ln(U0 / U), both taken at the upper end of their
 * tolerance. A waiting time is a minimum, never a proof that something is dead.
 */
public final class Discharge implements Calculation<Discharge.Inputs, Discharge.Results> {

    public record Inputs(
            @Domain(above = 0) double capacitanceF,
            @Domain(above = 0) double resistanceOhm,
            @Domain(from = 0) double startV,
            @Preset("60") @Domain(above = 0) double limitV,
            @Domain(from = 0) double limitS,
            @Preset("0") @Domain(from = 0) double capacitanceTolerancePercent,
            @Preset("0") @Domain(from = 0) double resistanceTolerancePercent) {

        double worstF() {
            return capacitanceF * (1 + capacitanceTolerancePercent / 100);
        }

        double worstOhm() {
            return resistanceOhm * (1 + resistanceTolerancePercent / 100);
        }
    }

    /**
     * @param timeS until limitV is reached; 0 if the start is no higher
     * @param voltageAtLimitV what is left at limitS
     * @param energyJ at the start
     * @param energyAtLimitVoltageJ what the capacitor still holds at limitV: 60 V on a large one is no harmless energy
     */
    public record Results(double timeS, double voltageAtLimitV, double energyJ, double energyAtLimitVoltageJ) {}

    @Override
    public String name() {
        return "discharge";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.DECAY,
                Source.seen("FMVSS 305, 82 FR 44945", "exposed contacts: 60 V DC within 1 s"),
                Source.seen("IEC 60204-1", "6.2.4, machinery: 60 V within 5 s, as restated in a commentary"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.waitingIsNoProof"),
                Origins.PACK_STAYS_LIVE,
                Origins.MAKES_NOTHING_SAFE,
                Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double tauS = in.worstOhm() * in.worstF();
        double timeS = in.startV() <= in.limitV() ? 0 : tauS * Math.log(in.startV() / in.limitV());
        double voltageAtLimitV = in.startV() * Math.exp(-in.limitS() / tauS);
        double energyJ = Capacitor.energyJ(in.worstF(), in.startV());
        double energyAtLimitVoltageJ = Capacitor.energyJ(in.worstF(), in.limitV());
        Decision decision = Limit.atMost(in.limitS()).judge(timeS, 0, "s");
        return Answer.worked(new Working<>(
                new Results(timeS, voltageAtLimitV, energyJ, energyAtLimitVoltageJ),
                Optional.of(decision),
                decision.because(name(), Plain.beside(in.limitS(), timeS), in.limitV(), in.limitS()),
                List.of(
                        Step.of("tau", "τ = R · C", tauS, "s", "%s · %s", in.worstOhm(), in.worstF()),
                        time(in, tauS, timeS),
                        Step.of(
                                "voltageLeft",
                                "U(t) = U0 · e^(−t/τ)",
                                voltageAtLimitV,
                                "V",
                                "%s · e^(−%s/%s)",
                                in.startV(),
                                in.limitS(),
                                tauS),
                        Capacitor.step("energyAtStart", in.worstF(), in.startV()),
                        Capacitor.step("energyLeft", in.worstF(), in.limitV())),
                sources(),
                cautions()));
    }

    private static Step time(Inputs in, double tauS, double timeS) {
        return in.startV() <= in.limitV()
                ? Step.of("time", "U0 ≤ U: t = 0", timeS, "s", "%s ≤ %s", in.startV(), in.limitV())
                : Step.of("time", "t = τ · ln(U0 / U)", timeS, "s", "%s · ln(%s / %s)", tauS, in.startV(), in.limitV());
    }
}

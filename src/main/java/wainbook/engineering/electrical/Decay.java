package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Time constant from two voltages of a discharge, τ = Δt / ln(Ua / Ub), and the time from the second to a lower voltage. */
public final class Decay implements Calculation<Decay.Inputs, Decay.Results> {

    public record Inputs(
            @Domain(above = 0) double firstV,
            @Domain(above = 0) double secondV,
            @Domain(above = 0) double betweenS,
            @Preset("60") @Domain(above = 0) double limitV) {}

    /** @param remainingS from the second reading to limitV; 0 if it is reached */
    public record Results(double tauS, double remainingS) {}

    @Override
    public String name() {
        return "decay";
    }

    @Override
    public List<Source> sources() {
        return List.of(Origins.DECAY);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.waitingIsNoProof"), Origins.PACK_STAYS_LIVE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (Plain.compared(in.secondV()) >= Plain.compared(in.firstV())) {
            return Answer.impossible("does-not-fall", in.firstV(), in.secondV());
        }
        double tauS = in.betweenS() / Math.log(in.firstV() / in.secondV());
        double remainingS = in.secondV() <= in.limitV() ? 0 : tauS * Math.log(in.secondV() / in.limitV());
        return found(
                new Results(tauS, remainingS),
                Sentence.brief("engineering.decay.none", in.limitV(), remainingS),
                Step.of(
                        "tau",
                        "τ = Δt / ln(Ua / Ub)",
                        tauS,
                        "s",
                        "%s / ln(%s / %s)",
                        in.betweenS(),
                        in.firstV(),
                        in.secondV()),
                Step.of(
                        "time",
                        "t = τ · ln(Ub / U), 0 if reached",
                        remainingS,
                        "s",
                        "%s · ln(%s / %s)",
                        tauS,
                        in.secondV(),
                        in.limitV()));
    }
}

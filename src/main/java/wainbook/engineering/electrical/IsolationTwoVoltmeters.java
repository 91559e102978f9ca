package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Limit;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Insulation resistance with a voltmeter on each rail at once, so that both readings add up to the bus:
 * Ri = 1 / (1 / (R0 · (V2/U2 − V1/U1)) − 1/r), U on the rail that reads higher and bears the resistor in the second pair, V on
 * the other, r the input resistance of each meter.
 */
public final class IsolationTwoVoltmeters
        implements Calculation<IsolationTwoVoltmeters.Inputs, IsolationTwoVoltmeters.Results> {

    /**
     * @param higherV the rail that reads higher against the chassis
     * @param lowerV the other rail at the same time
     * @param higherWithV the first rail with the resistor on it
     * @param lowerWithV the other rail then
     */
    public record Inputs(
            @Domain(above = 0) double higherV,
            @Domain(from = 0) double lowerV,
            @Domain(above = 0) double higherWithV,
            @Domain(from = 0) double lowerWithV,
            @Domain(above = 0) double insertedOhm,
            @Domain(above = 0) double meterOhm,
            @Domain(above = 0) double workingV,
            @Domain(oneOf = {100, 500}) double limitOhmPerVolt) {}

    /** @param uncorrectedOhm with one meter still beside it */
    public record Results(double isolationOhm, double uncorrectedOhm, double ohmPerVolt, double limitOhm) {}

    @Override
    public String name() {
        return "isolation-two-voltmeters";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("GB 38031-2025", "Annex B, two voltmeters, formula derived again from Kirchhoff’s laws"),
                Origins.ISOLATION_LIMITS,
                Origins.WORKING_VOLTAGE);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.LIVE_WORK, Origins.PACK_STAYS_LIVE, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.higherV() < in.lowerV()) {
            return Answer.impossible("wrong-rail", "higher", in.higherV(), in.lowerV());
        }
        double uncorrectedOhm = in.insertedOhm() * (in.lowerWithV() / in.higherWithV() - in.lowerV() / in.higherV());
        if (Plain.compared(uncorrectedOhm) <= 0 || Plain.compared(uncorrectedOhm) >= Plain.compared(in.meterOhm())) {
            return Answer.impossible("meters-inconsistent", uncorrectedOhm, in.meterOhm());
        }
        double isolationOhm = 1 / (1 / uncorrectedOhm - 1 / in.meterOhm());
        double limitOhm = in.limitOhmPerVolt() * in.workingV();
        Decision decision = Limit.atLeast(limitOhm).judge(isolationOhm, 0, "ohm");
        return judged(
                new Results(isolationOhm, uncorrectedOhm, isolationOhm / in.workingV(), limitOhm),
                decision,
                List.of(Plain.beside(limitOhm, isolationOhm), limitOhm),
                Step.of(
                        "uncorrected",
                        "R0 · (V2/U2 − V1/U1)",
                        uncorrectedOhm,
                        "ohm",
                        "%s · (%s/%s − %s/%s)",
                        in.insertedOhm(),
                        in.lowerWithV(),
                        in.higherWithV(),
                        in.lowerV(),
                        in.higherV()),
                Step.of(
                        "isolation",
                        "Ri = 1 / (1/R − 1/r)",
                        isolationOhm,
                        "ohm",
                        "1 / (1/%s − 1/%s)",
                        uncorrectedOhm,
                        in.meterOhm()));
    }
}

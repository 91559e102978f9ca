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
 * Resistance between an exposed conductive part and the chassis: R = U / I − R_lead. Below 0.1 Ω with at least 0.2 A flowing
 * (UN R100 5.1.2.2). With a reversed reading the mean of both magnitudes is used, so that stray voltages cancel.
 */
public final class Bonding implements Calculation<Bonding.Inputs, Bonding.Results> {

    public static final double LIMIT_OHM = 0.1;
    public static final double LEAST_CURRENT_A = 0.2;

    /** @param leadOhm resistance of the leads that is part of the reading; 0 for a four-wire reading */
    public record Inputs(
            @Domain(above = 0) double currentA,
            double voltageV,
            Optional<Double> reversedVoltageV,
            @Preset("0") @Domain(from = 0) double leadOhm,
            @Preset("0") @Domain(from = 0) double expandedUncertaintyOhm) {}

    public record Results(double resistanceOhm, double limitOhm) {}

    @Override
    public String name() {
        return "bonding";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("UN R100", "5.1.2.2"),
                Origins.GUARD_BAND,
                Source.practice("both polarities averaged against thermal voltages"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.currentA() < LEAST_CURRENT_A) {
            return Answer.impossible("current-too-low", in.currentA(), LEAST_CURRENT_A);
        }
        double voltageV = in.reversedVoltageV()
                .map(reversed -> (Math.abs(in.voltageV()) + Math.abs(reversed)) / 2)
                .orElse(Math.abs(in.voltageV()));
        double readOhm = voltageV / in.currentA();
        if (Plain.compared(readOhm) < Plain.compared(in.leadOhm())) {
            return Answer.impossible("leads-exceed-reading", in.leadOhm(), readOhm);
        }
        double resistanceOhm = readOhm - in.leadOhm();
        Decision decision = Limit.below(LIMIT_OHM).judge(resistanceOhm, in.expandedUncertaintyOhm(), "ohm");
        return Answer.worked(new Working<>(
                new Results(resistanceOhm, LIMIT_OHM),
                Optional.of(decision),
                decision.because(
                        name(), Plain.beside(LIMIT_OHM, resistanceOhm), LIMIT_OHM, in.expandedUncertaintyOhm()),
                List.of(
                        voltage(in, voltageV),
                        Step.of(
                                "bond",
                                "R = U / I − R_lead",
                                resistanceOhm,
                                "ohm",
                                "%s / %s − %s",
                                voltageV,
                                in.currentA(),
                                in.leadOhm())),
                sources(),
                cautions()));
    }

    private static Step voltage(Inputs in, double voltageV) {
        return in.reversedVoltageV()
                .map(reversed -> Step.of(
                        "meanVoltage",
                        "U = (|U₊| + |U₋|) / 2",
                        voltageV,
                        "V",
                        "(|%s| + |%s|) / 2",
                        in.voltageV(),
                        reversed))
                .orElseGet(() -> Step.of("voltage", "U = |U₊|", voltageV, "V", "|%s|", in.voltageV()));
    }
}

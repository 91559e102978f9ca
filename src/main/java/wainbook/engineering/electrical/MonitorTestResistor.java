package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * Resistors that try an insulation monitor: put beside the insulation that is there, R = 1 / (1/target − 1/R∥). The target is
 * set / (1 + device error) where it must alarm, half the set value for a quick alarm, 1.2 times it where it must not. The
 * test must not take the vehicle below its legal insulation resistance.
 */
public final class MonitorTestResistor implements Calculation<MonitorTestResistor.Inputs, MonitorTestResistor.Results> {

    private static final double HALF = 0.5;
    private static final double CLEAR_OF_ALARM = 1.2;

    /** @param isolationOhm both rails together against the chassis, before the test */
    public record Inputs(
            @Domain(above = 0) double isolationOhm,
            @Domain(above = 0) double setOhmPerVolt,
            @Domain(above = 0) double workingV,
            @Domain(from = 0) double deviceErrorPercent,
            @Domain(above = 0) double legalOhmPerVolt) {

        double setOhm() {
            return setOhmPerVolt * workingV;
        }

        double alarmOhm() {
            return setOhm() / (1 + deviceErrorPercent / 100);
        }

        double legalOhm() {
            return legalOhmPerVolt * workingV;
        }

        /** None where the insulation is already at or below the target: a resistor beside it only lowers it. */
        Optional<Double> besideOhm(double targetOhm) {
            return Plain.compared(targetOhm) < Plain.compared(isolationOhm)
                    ? Optional.of(1 / (1 / targetOhm - 1 / isolationOhm))
                    : Optional.empty();
        }
    }

    /** @param powerW in the must-alarm resistor with the working voltage across it */
    public record Results(
            double mustAlarmOhm,
            @Always Optional<Double> halfSetOhm,
            @Always Optional<Double> mustNotAlarmOhm,
            double powerW) {}

    @Override
    public String name() {
        return "monitor-test-resistor";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("UN GTR 13 and UN R100", "test of the on-board monitor, clause not seen"),
                Source.memory("IEC 61557-8", "relative uncertainty, response at half the set value"),
                Origins.CONDUCTANCES,
                Source.practice("1.2 times the set value must not alarm"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.insertDead"),
                Origins.LIVE_WORK,
                Origins.MAKES_NOTHING_SAFE,
                Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Optional<Double> mustAlarmOhm = in.besideOhm(in.alarmOhm());
        if (mustAlarmOhm.isEmpty() || Plain.compared(in.alarmOhm()) < Plain.compared(in.legalOhm())) {
            return Answer.impossible("isolation-already-below", in.alarmOhm(), in.isolationOhm(), in.legalOhm());
        }
        double alarmResistorOhm = mustAlarmOhm.get();
        double halfOhm = HALF * in.setOhm();
        double clearOhm = CLEAR_OF_ALARM * in.setOhm();
        double powerW = in.workingV() * in.workingV() / alarmResistorOhm;
        Results results = new Results(alarmResistorOhm, in.besideOhm(halfOhm), in.besideOhm(clearOhm), powerW);
        Stream<Step> resistors = Stream.of(
                        step("mustAlarm", in, in.alarmOhm(), mustAlarmOhm),
                        step("halfSet", in, halfOhm, results.halfSetOhm()),
                        step("mustNotAlarm", in, clearOhm, results.mustNotAlarmOhm()))
                .flatMap(Optional::stream);
        Step power = Step.of("power", "P = Uw² / R", powerW, "W", "%s² / %s", in.workingV(), alarmResistorOhm);
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                Sentence.of("engineering.monitor-test-resistor.none", Plain.beside(in.alarmOhm(), alarmResistorOhm)),
                Stream.concat(resistors, Stream.of(power)).toList(),
                sources(),
                cautions(halfOhm < in.legalOhm())));
    }

    private static Optional<Step> step(String name, Inputs in, double targetOhm, Optional<Double> resistorOhm) {
        return resistorOhm.map(ohm -> Step.of(
                name, "R = 1 / (1/target − 1/R∥)", ohm, "ohm", "1 / (1/%s − 1/%s)", targetOhm, in.isolationOhm()));
    }

    private List<Sentence> cautions(boolean halfIsBelowLegal) {
        Stream<Sentence> below =
                halfIsBelowLegal ? Stream.of(Sentence.of("engineering.caution.halfSetBelowLegal")) : Stream.empty();
        return Stream.concat(below, cautions().stream()).toList();
    }
}

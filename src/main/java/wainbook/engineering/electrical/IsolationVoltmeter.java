package wainbook.engineering.electrical;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
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
 * Insulation resistance by the vehicle's own pack and a voltmeter: Ri = R0 · Ub · (1/U′ − 1/U), where R0 goes on the rail
 * that reads higher against the chassis. The meter's own resistance cancels; Ri is the lesser of the two rails' resistances.
 * On the other rail the formula would return the greater one, which is why that is refused. Judged over the working voltage.
 */
public final class IsolationVoltmeter implements Calculation<IsolationVoltmeter.Inputs, IsolationVoltmeter.Results> {

    private static final double RAILS_MAY_EXCEED_BUS = 1.01;

    public enum Rail {
        NEGATIVE,
        POSITIVE;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param busV between the rails
     * @param withResistorV the rail with the resistor against the chassis, the resistor in place
     * @param workingV the greatest voltage the specification gives, not the voltage of the day
     * @param readingAccuracyPercent with readingFloorV: each voltage lies within this share of it, plus the floor
     * @param meterOhm input resistance of the voltmeter; gives a second estimate from the first readings
     */
    public record Inputs(
            @Domain(above = 0) double busV,
            @Domain(from = 0) double negativeToChassisV,
            @Domain(from = 0) double positiveToChassisV,
            @Domain(above = 0) double withResistorV,
            @Domain(above = 0) double insertedOhm,
            Rail insertedRail,
            @Domain(above = 0) double workingV,
            @Domain(oneOf = {100, 500}) double limitOhmPerVolt,
            @Preset("0") @Domain(from = 0) double readingAccuracyPercent,
            @Preset("0") @Domain(from = 0) double readingFloorV,
            @Preset("0") @Domain(from = 0) double insertedTolerancePercent,
            Optional<@Domain(above = 0) Double> meterOhm) {

        double railV() {
            return insertedRail == Rail.NEGATIVE ? negativeToChassisV : positiveToChassisV;
        }

        double otherRailV() {
            return insertedRail == Rail.NEGATIVE ? positiveToChassisV : negativeToChassisV;
        }

        double sumV() {
            return negativeToChassisV + positiveToChassisV;
        }
    }

    /**
     * @param parallelOhm both rails together against the chassis, from the first readings; absent if they cannot show it
     * @param negativeOhm that rail alone, from the same readings; likewise positiveOhm
     */
    public record Results(
            double isolationOhm,
            double ohmPerVolt,
            double limitOhm,
            double expandedUncertaintyOhm,
            Optional<Double> parallelOhm,
            Optional<Double> negativeOhm,
            Optional<Double> positiveOhm) {}

    /** The rail that the resistor goes on: the one that reads higher. */
    public static Rail railFor(double negativeToChassisV, double positiveToChassisV) {
        return negativeToChassisV >= positiveToChassisV ? Rail.NEGATIVE : Rail.POSITIVE;
    }

    /** Whether the rails read more together than the bus gives, which no leak can do. */
    public static boolean railsExceedBus(double busV, double negativeToChassisV, double positiveToChassisV) {
        return Plain.compared(negativeToChassisV + positiveToChassisV) > Plain.compared(busV * RAILS_MAY_EXCEED_BUS);
    }

    @Override
    public String name() {
        return "isolation-voltmeter";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("UN R100, revision 2", "method with the tested device’s own voltage, 1.2.3.4"),
                Origins.ISOLATION_LIMITS,
                Origins.WORKING_VOLTAGE,
                Source.memory("JCGM 100:2008", "5.1.2, applied to the formula by hand"),
                Origins.GUARD_BAND,
                Origins.CONDUCTANCES);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.LIVE_WORK, Origins.PACK_STAYS_LIVE, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.railV() < in.otherRailV()) {
            return Answer.impossible("wrong-rail", in.insertedRail(), in.railV(), in.otherRailV());
        }
        if (Plain.compared(in.withResistorV()) >= Plain.compared(in.railV())
                || railsExceedBus(in.busV(), in.negativeToChassisV(), in.positiveToChassisV())) {
            return Answer.impossible("readings-inconsistent", in.withResistorV(), in.railV(), in.sumV(), in.busV());
        }
        double isolationOhm = in.insertedOhm() * in.busV() * (1 / in.withResistorV() - 1 / in.railV());
        double uncertaintyOhm = VoltmeterUncertainty.expandedOhm(in, isolationOhm);
        double limitOhm = in.limitOhmPerVolt() * in.workingV();
        Optional<Double> parallelOhm = in.meterOhm()
                .map(meterOhm -> meterOhm * (in.busV() / in.sumV() - 1))
                .filter(ohm -> ohm > 0);
        Decision decision = Limit.atLeast(limitOhm).judge(isolationOhm, uncertaintyOhm, "ohm");
        Results results = new Results(
                isolationOhm,
                isolationOhm / in.workingV(),
                limitOhm,
                uncertaintyOhm,
                parallelOhm,
                rail(parallelOhm, in.negativeToChassisV(), in.positiveToChassisV()),
                rail(parallelOhm, in.positiveToChassisV(), in.negativeToChassisV()));
        return Answer.worked(new Working<>(
                results,
                Optional.of(decision),
                decision.because(
                        name(), Plain.beside(limitOhm, isolationOhm), limitOhm, Plain.beside(0, uncertaintyOhm)),
                steps(in, results),
                sources(),
                cautions()));
    }

    /** R∥ · (1 + U_rail / U_other); a rail beside one that reads nothing has no leak that these readings show. */
    private static Optional<Double> rail(Optional<Double> parallelOhm, double railV, double otherV) {
        return parallelOhm.map(ohm -> ohm * (1 + railV / otherV)).filter(Double::isFinite);
    }

    private static List<Step> steps(Inputs in, Results out) {
        Step isolation = Step.of(
                "isolation",
                "Ri = R0 · Ub · (1/U′ − 1/U)",
                out.isolationOhm(),
                "ohm",
                "%s · %s · (1/%s − 1/%s)",
                in.insertedOhm(),
                in.busV(),
                in.withResistorV(),
                in.railV());
        Step perVolt =
                Step.of("perVolt", "Ri / Uw", out.ohmPerVolt(), "ohm/V", "%s / %s", out.isolationOhm(), in.workingV());
        Step limit =
                Step.of("limit", "limit · Uw", out.limitOhm(), "ohm", "%s · %s", in.limitOhmPerVolt(), in.workingV());
        Step uncertainty = VoltmeterUncertainty.step(in, out);
        Stream<Step> parallel = out.parallelOhm().stream()
                .map(ohm -> Step.of(
                        "parallel",
                        "R∥ = Rv · (Ub / (U1 + U2) − 1)",
                        ohm,
                        "ohm",
                        "%s · (%s / (%s + %s) − 1)",
                        in.meterOhm().orElseThrow(),
                        in.busV(),
                        in.negativeToChassisV(),
                        in.positiveToChassisV()));
        return Stream.concat(Stream.of(isolation, perVolt, limit, uncertainty), parallel)
                .toList();
    }
}

package wainbook.engineering.tightening;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** A torque in the units that old wrenches and sheets use; 1 lbf = 0.45359237 · 9.80665 N, 1 ft = 0.3048 m, all exact. */
public final class TorqueUnit implements Calculation<TorqueUnit.Inputs, TorqueUnit.Results> {

    private static final double POUND_FORCE_N = 0.45359237 * 9.80665;

    /** A unit of torque, with what one of it is in newton metres. */
    public enum Unit {
        NEWTON_METRE("N·m", 1),
        POUND_FORCE_FOOT("lbf·ft", POUND_FORCE_N * 0.3048),
        POUND_FORCE_INCH("lbf·in", POUND_FORCE_N * 0.0254),
        KILOGRAM_FORCE_METRE("kgf·m", 9.80665);

        private final String written;
        private final double newtonMetres;

        Unit(String written, double newtonMetres) {
            this.written = written;
            this.newtonMetres = newtonMetres;
        }

        @Override
        public String toString() {
            return written;
        }
    }

    public record Inputs(@Domain(from = 0) double torque, Unit unit) {}

    public record Results(
            double torqueNm, double poundForceFeet, double poundForceInches, double kilogramForceMetres) {}

    @Override
    public String name() {
        return "torque-unit";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("International yard and pound, standard gravity", "exact by definition"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.makerFirst"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double torqueNm = in.torque() * in.unit().newtonMetres;
        return found(
                new Results(
                        torqueNm,
                        torqueNm / Unit.POUND_FORCE_FOOT.newtonMetres,
                        torqueNm / Unit.POUND_FORCE_INCH.newtonMetres,
                        torqueNm / Unit.KILOGRAM_FORCE_METRE.newtonMetres),
                Sentence.brief("engineering.torque-unit.none", in.torque(), in.unit(), torqueNm),
                Step.of("torque", "M = torque · unit", torqueNm, "Nm", "%s · %s", in.torque(), in.unit().newtonMetres));
    }
}

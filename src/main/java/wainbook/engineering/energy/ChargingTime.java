package wainbook.engineering.energy;

import java.util.ArrayList;
import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Time to charge: full power up to a state of charge, then falling in a straight line with it down to a share of that power at 100 %.
 * t = E (s_t − s_0) / P + E / (P k) · ln(1 / (1 − k (s_1 − s_t))), k = (1 − p_end) / (1 − s_t).
 */
public final class ChargingTime implements Calculation<ChargingTime.Inputs, ChargingTime.Results> {

    /**
     * @param powerKw least of charger, packs at their temperature, cable and site
     * @param efficiency packs over charger
     * @param fromSoc state of charge, 0 to 1; likewise {@code toSoc}
     * @param taperSoc from which the power falls
     * @param endShare of the power that is left at 100 %
     */
    public record Inputs(
            @Domain(above = 0) double packKwh,
            @Domain(above = 0) double powerKw,
            @Domain(above = 0, to = 1) double efficiency,
            @Domain(from = 0, to = 1) double fromSoc,
            @Domain(from = 0, to = 1) double toSoc,
            @Domain(from = 0, to = 1) double taperSoc,
            @Domain(from = 0, to = 1) double endShare)
            implements Checked {

        @Override
        public List<Fault> faults() {
            return toSoc < fromSoc ? List.of(Fault.of("toSoc", "notBelow", "fromSoc", fromSoc)) : List.of();
        }

        private double packKw() {
            return powerKw * efficiency;
        }

        private double evenHours() {
            return packKwh * Math.max(0, Math.min(toSoc, taperSoc) - fromSoc) / packKw();
        }

        private double fall() {
            return taperSoc < 1 ? (1 - endShare) / (1 - taperSoc) : 0;
        }

        /** Share of the power that is left at this state of charge. */
        private double leftAt(double soc) {
            return 1 - fall() * Math.max(0, soc - taperSoc);
        }

        private double fallingHours() {
            double entered = Math.max(fromSoc, taperSoc);
            if (toSoc <= entered) {
                return 0;
            }
            return fall() == 0
                    ? packKwh * (toSoc - entered) / packKw()
                    : packKwh / (packKw() * fall()) * Math.log(leftAt(entered) / leftAt(toSoc));
        }

        private boolean endless() {
            return toSoc > Math.max(fromSoc, taperSoc) && leftAt(toSoc) <= 0;
        }
    }

    public record Results(double hours) {}

    @Override
    public String name() {
        return "charging-time";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Charge at a power that falls in a straight line", "dE/dt = P · (1 − k (s − s_t))"),
                Source.seen(
                        "Documentation of a public life-cycle inventory of buses, Paul Scherrer Institut",
                        "efficiency 0.95 by plug, 0.90 by pantograph"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.coldCharge"), Origins.MAKERS_PACK);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.endless()) {
            return Answer.impossible("charge-never-ends", in.toSoc());
        }
        double evenHours = in.evenHours();
        double fallingHours = in.fallingHours();
        double hours = evenHours + fallingHours;
        var steps = new ArrayList<Step>();
        steps.add(Step.of("powerAtPacks", "P · η", in.packKw(), "kW", "%s · %s", in.powerKw(), in.efficiency()));
        steps.add(Step.of(
                "evenCharge",
                "E · (s − s₀) / P",
                evenHours,
                "h",
                "%s · (%s − %s) / %s",
                in.packKwh(),
                Math.max(in.fromSoc(), Math.min(in.toSoc(), in.taperSoc())),
                in.fromSoc(),
                in.packKw()));
        if (fallingHours > 0) {
            steps.add(Step.of(
                    "fallingCharge",
                    "E / (P · k) · ln(share left at its start / at its end)",
                    fallingHours,
                    "h",
                    "E = %s, P = %s, k = %s",
                    in.packKwh(),
                    in.packKw(),
                    in.fall()));
        }
        return found(
                new Results(hours),
                Sentence.brief("engineering.charging-time.none", 100 * in.fromSoc(), 100 * in.toSoc(), hours),
                steps.toArray(Step[]::new));
    }
}

package wainbook.engineering.energy;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Driven;
import wainbook.engineering.energy.driving.Energies;
import wainbook.engineering.energy.driving.Kinematics;
import wainbook.engineering.energy.driving.Trace;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * What a recorded way takes from the packs, second by second: the forces at the wheels by the mean speed of the second, through the
 * drive to the terminals, and through the resistance of the packs to the cells. What packs cannot deliver is refused and not clipped.
 */
public final class DutyTrace implements Calculation<DutyTrace.Inputs, DutyTrace.Results> {

    /** A day at one sample a second, both ends included. */
    private static final int LONGEST = 86_401;

    /** @param gradient rise over run, one for each speed */
    public record Inputs(
            @Size(from = 2, to = LONGEST) List<@Domain(from = 0, to = 1000) Double> speedKmh,
            @Size(from = 2, to = LONGEST) List<@Domain(from = -1, to = 1) Double> gradient,
            Vehicle vehicle,
            Battery battery)
            implements Checked {
        public Inputs {
            speedKmh = List.copyOf(speedKmh);
            gradient = List.copyOf(gradient);
        }

        @Override
        public List<Fault> faults() {
            return speedKmh.size() == gradient.size()
                    ? vehicle.faults("vehicle")
                    : List.of(Fault.of("gradient", "asMany", "speedKmh", speedKmh.size()));
        }

        private Driven driven() {
            return Driven.over(new Trace(speedKmh, gradient), vehicle, battery);
        }
    }

    /**
     * @param energyKwh out of the cells
     * @param kwhPerKm absent where the vehicle does not move
     * @param tractionKwh at the wheels; rolling, air, grade, kinetic energy and braking make it up
     */
    public record Results(
            double distanceKm,
            double energyKwh,
            @Always Optional<Double> kwhPerKm,
            int stops,
            double tractionKwh,
            double rollingKwh,
            double airKwh,
            double gradeKwh,
            double kineticKwh,
            double brakingKwh,
            double drawnKwh,
            double regeneratedKwh,
            double consumersKwh,
            double lossKwh,
            double highestW,
            double lowestW,
            double rmsA,
            double meanKmh,
            int idleS,
            double positiveKineticMps2,
            double effectiveSquaredM2s2,
            double ascentM,
            double descentM) {

        private static Results of(Kinematics way, Energies spent) {
            double km = way.distanceKm();
            return new Results(
                    km,
                    spent.packKwh(),
                    km > 0 ? Optional.of(spent.packKwh() / km) : Optional.empty(),
                    way.stops(),
                    spent.tractionKwh(),
                    spent.rollingKwh(),
                    spent.airKwh(),
                    spent.gradeKwh(),
                    spent.kineticKwh(),
                    spent.brakingKwh(),
                    spent.drawnKwh(),
                    spent.regeneratedKwh(),
                    spent.consumersKwh(),
                    spent.lossKwh(),
                    spent.highestW(),
                    spent.lowestW(),
                    spent.rmsA(),
                    way.meanKmh(),
                    way.idleS(),
                    way.positiveKineticMps2(),
                    way.effectiveSquaredM2s2(),
                    way.ascentM(),
                    way.descentM());
        }
    }

    @Override
    public String name() {
        return "duty-trace";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.MOTION,
                Source.memory("Voltage behind a resistance", "P = U · I − R · I²"),
                Source.practice("regeneration: the driven axle’s share, fading out at low speed, up to a limit"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MEASURE_FIRST, Origins.WORST_DAY, Sentence.of("engineering.caution.traceOfAnother"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        return in.driven()
                .fold(whole -> answer(in, Results.of(whole.kinematics(), whole.energies())), DutyTrace::refused);
    }

    private static Answer<Results> refused(Driven.Beyond beyond) {
        return Double.isFinite(beyond.neededW())
                ? Answer.impossible("pack-cannot-deliver", beyond.interval(), beyond.neededW(), beyond.greatestW())
                : Answer.impossible("beyond-reckoning");
    }

    private Answer<Results> answer(Inputs in, Results found) {
        return found(
                found,
                Sentence.brief(
                        found.kwhPerKm().isPresent() ? "engineering.duty-trace.none" : "engineering.duty-trace.stands",
                        found.energyKwh(),
                        found.distanceKm(),
                        found.kwhPerKm().orElse(0.0)),
                Step.of(
                        "distance",
                        "d = Σ ½ · (vₖ + vₖ₋₁) · 1 s",
                        found.distanceKm(),
                        "km",
                        "%s s, stops: %s",
                        in.speedKmh().size() - 1,
                        found.stops()),
                Step.of(
                        "tractionAtWheels",
                        "E = rolling + air + grade + kinetic + braking",
                        found.tractionKwh(),
                        "kWh",
                        "%s + %s + %s + %s + %s",
                        found.rollingKwh(),
                        found.airKwh(),
                        found.gradeKwh(),
                        found.kineticKwh(),
                        found.brakingKwh()),
                Step.of(
                        "drawnByDrive",
                        "E = traction / η",
                        found.drawnKwh(),
                        "kWh",
                        "%s / %s",
                        found.tractionKwh(),
                        in.vehicle().tractionEfficiency()),
                Step.of(
                        "regenerated",
                        "Σ min(|P| · q · r · η, limit), q from 0 to 1 between two speeds",
                        found.regeneratedKwh(),
                        "kWh",
                        "r = %s, η = %s, of %s",
                        in.vehicle().regenerationShare(),
                        in.vehicle().regenerationEfficiency(),
                        found.brakingKwh()),
                Step.of(
                        "fromThePacks",
                        "E = drawn − regenerated + consumers + loss",
                        found.energyKwh(),
                        "kWh",
                        "%s − %s + %s + %s",
                        found.drawnKwh(),
                        found.regeneratedKwh(),
                        found.consumersKwh(),
                        found.lossKwh()));
    }
}

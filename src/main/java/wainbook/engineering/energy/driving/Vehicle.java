package wainbook.engineering.energy.driving;

import java.util.ArrayList;
import java.util.List;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.energy.resistance.Gravity;

/**
 * A vehicle as its energy sees it.
 *
 * @param rotatingFactor λ, mass as it resists being brought to speed over mass as weighed
 * @param rolling coefficient of rolling resistance
 * @param cdA drag coefficient by frontal area, m²
 * @param airDensity kg/m³
 * @param tractionEfficiency wheels over pack terminals while pulling
 * @param regenerationShare of the braking power that the driven axle takes
 * @param regenerationEfficiency pack terminals over wheels while braking
 * @param regenerationLowKmh below it nothing comes back
 * @param regenerationHighKmh from it on the whole share does
 * @param regenerationLimitW most that comes back before consumers
 * @param auxiliaryW drawn at all times; likewise {@code heatingW} and {@code ptoW}
 */
public record Vehicle(
        @Domain(above = 0) double massKg,
        @Domain(from = 1) double rotatingFactor,
        @Domain(from = 0, below = 1) double rolling,
        @Domain(from = 0) double cdA,
        @Domain(from = 0) double airDensity,
        @Domain(above = 0, to = 1) double tractionEfficiency,
        @Domain(from = 0, to = 1) double regenerationShare,
        @Domain(from = 0, to = 1) double regenerationEfficiency,
        @Domain(from = 0) double regenerationLowKmh,
        @Domain(from = 0) double regenerationHighKmh,
        @Domain(from = 0) double regenerationLimitW,
        @Domain(from = 0) double auxiliaryW,
        @Domain(from = 0) double heatingW,
        @Domain(from = 0) double ptoW) {

    private static final double KMH_A_MPS = 3.6;

    /** @return at the wheels */
    public Forces forces(Motion motion) {
        return new Forces(
                massKg * rotatingFactor * motion.accelerationMps2(),
                massKg * Gravity.MPS2 * motion.sine(),
                motion.stands() ? 0 : massKg * Gravity.MPS2 * rolling * motion.cosine(),
                airN(motion.speedMps()));
    }

    /**
     * Power between pack and motor, without consumers.
     *
     * @param wheelW below nought while braking
     * @param full the pack takes nothing more
     */
    public double drawnW(double wheelW, double speedMps, boolean full) {
        if (wheelW >= 0) {
            return wheelW / tractionEfficiency;
        }
        double backW = -wheelW * faded(speedMps) * regenerationShare * regenerationEfficiency;
        return full ? 0 : -Math.min(backW, regenerationLimitW);
    }

    /** @return what is drawn whether the vehicle moves or not */
    public double consumersW() {
        return auxiliaryW + heatingW + ptoW;
    }

    public Vehicle weighing(double otherKg) {
        return new Vehicle(
                otherKg,
                rotatingFactor,
                rolling,
                cdA,
                airDensity,
                tractionEfficiency,
                regenerationShare,
                regenerationEfficiency,
                regenerationLowKmh,
                regenerationHighKmh,
                regenerationLimitW,
                auxiliaryW,
                heatingW,
                ptoW);
    }

    /** Faults between its fields, named below this path. */
    public List<Fault> faults(String path) {
        var faults = new ArrayList<Fault>();
        if (regenerationHighKmh < regenerationLowKmh) {
            faults.add(Fault.of(
                    path + ".regenerationHighKmh", "notBelow", path + ".regenerationLowKmh", regenerationLowKmh));
        }
        return faults;
    }

    /** @param squaredM2s2 v², turning masses counted */
    double kineticJ(double squaredM2s2) {
        return massKg * rotatingFactor * squaredM2s2 / 2;
    }

    double airN(double speedMps) {
        return airDensity * cdA * speedMps * speedMps / 2;
    }

    private double faded(double speedMps) {
        double kmh = speedMps * KMH_A_MPS;
        if (kmh >= regenerationHighKmh) {
            return 1;
        }
        return Math.max(0, (kmh - regenerationLowKmh) / (regenerationHighKmh - regenerationLowKmh));
    }
}

package wainbook.engineering.energy.pull;

import java.util.OptionalDouble;
import wainbook.engineering.energy.resistance.Gravity;

/**
 * From rest to a speed on the level, full pedal. By steps of a millisecond: the force is the least of what the limit asks, what the
 * torque gives and what the power gives at that speed.
 *
 * @param limitMps2 acceleration that the calibration holds whatever the load; infinite where it holds none
 */
public record PullAway(DriveUnit drive, Load load, double limitMps2) {

    private static final double STEP_S = 0.001;
    private static final double LONGEST_S = 600;
    private static final double KMH_A_MPS = 3.6;

    /** @return seconds; empty where the vehicle does not come to that speed within ten minutes */
    public OptionalDouble secondsTo(double kmh) {
        double wanted = kmh / KMH_A_MPS;
        double speed = 0;
        for (int step = 0; step * STEP_S <= LONGEST_S; step++) {
            if (speed >= wanted) {
                return OptionalDouble.of(step * STEP_S);
            }
            speed += accelerationMps2(speed) * STEP_S;
        }
        return OptionalDouble.empty();
    }

    private double accelerationMps2(double speedMps) {
        double most = drive.greatestForceN();
        if (speedMps > 0) {
            most = Math.min(most, drive.wheelPowerW() / speedMps);
        }
        double resistance = load.massKg() * Gravity.MPS2 * load.rolling()
                + load.airDensity() * load.cdA() * speedMps * speedMps / 2;
        double free = (most - resistance) / (load.massKg() * load.rotatingFactor());
        return Math.max(0, Math.min(free, limitMps2));
    }
}

package wainbook.engineering.energy.pull;

import wainbook.engineering.energy.resistance.Gravity;

/**
 * A vehicle as its drive feels it.
 *
 * @param massKg as it is, or as the drive believes it is
 * @param cdA m²
 * @param airDensity kg/m³
 */
public record Load(double massKg, double rotatingFactor, double rolling, double cdA, double airDensity) {

    private static final double KMH_A_MPS = 3.6;
    private static final double FASTEST_MPS = 1000;
    private static final int HALVINGS = 100;

    /** @return force at the wheels for this acceleration, gradient (rise over run) and speed */
    public double forceN(double accelerationMps2, double gradient, double speedMps) {
        double cosine = 1 / Math.sqrt(1 + gradient * gradient);
        return massKg * rotatingFactor * accelerationMps2
                + massKg * Gravity.MPS2 * (rolling + gradient) * cosine
                + airDensity * cdA * speedMps * speedMps / 2;
    }

    /** @return acceleration on the level at rest under this force */
    public double accelerationMps2(double forceN) {
        return (forceN - massKg * Gravity.MPS2 * rolling) / (massKg * rotatingFactor);
    }

    /**
     * The speed at which a power at the wheels ends an acceleration on a slope. A limiter may end it sooner.
     *
     * @return km/h, at most {@value #FASTEST_MPS} m/s in those units where nothing holds the vehicle back
     */
    public double fastestKmh(double wheelPowerW, double accelerationMps2, double gradient) {
        double slow = 0;
        double fast = FASTEST_MPS;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (slow + fast) / 2;
            if (forceN(accelerationMps2, gradient, middle) * middle <= wheelPowerW) {
                slow = middle;
            } else {
                fast = middle;
            }
        }
        return slow * KMH_A_MPS;
    }
}

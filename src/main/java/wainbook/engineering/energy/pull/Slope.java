package wainbook.engineering.energy.pull;

import java.util.OptionalDouble;

/** The steepest slope that a pull holds: sin θ + f · cos θ = X, so θ = asin(X · cos φ) − φ with φ = atan f. */
public final class Slope {

    private Slope() {}

    /**
     * @param pull X, force left after acceleration over weight
     * @param rolling f
     * @return rise over run, below nought where the pull is less than rolling takes; empty where no angle exists: above it the pull
     *     is not what limits, below it the vehicle moves nowhere
     */
    public static OptionalDouble steepest(double pull, double rolling) {
        double rollingAngle = Math.atan(rolling);
        double sine = pull * Math.cos(rollingAngle);
        return Math.abs(sine) <= 1
                ? OptionalDouble.of(Math.tan(Math.asin(sine) - rollingAngle))
                : OptionalDouble.empty();
    }

    /** Where the wheels slip: X = μ · driven share, on a steady slope. The climb itself shifts load to the rear and is left out. */
    public static OptionalDouble byGrip(double friction, double drivenShare, double rolling) {
        return steepest(friction * drivenShare, rolling);
    }
}

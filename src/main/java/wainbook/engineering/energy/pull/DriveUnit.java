package wainbook.engineering.energy.pull;

/**
 * A drive from the shaft where its torque is given to the wheels. A torque without its shaft says nothing.
 *
 * @param torqueNm at that shaft
 * @param ratio from it to the wheels, 1 at the wheels themselves
 * @param efficiency from it to the wheels, above 0 to 1
 * @param wheelRadiusM rolling
 * @param powerW at that shaft
 */
public record DriveUnit(double torqueNm, double ratio, double efficiency, double wheelRadiusM, double powerW) {

    private static final double KMH_A_MPS = 3.6;

    public double greatestForceN() {
        return torqueNm * ratio * efficiency / wheelRadiusM;
    }

    public double wheelPowerW() {
        return powerW * efficiency;
    }

    /** @return speed above which power and not torque is the limit */
    public double cornerKmh() {
        return wheelPowerW() / greatestForceN() * KMH_A_MPS;
    }

    /** @return torque at the shaft for a force at the wheels */
    public double torqueNm(double forceN) {
        return forceN * wheelRadiusM / (ratio * efficiency);
    }
}

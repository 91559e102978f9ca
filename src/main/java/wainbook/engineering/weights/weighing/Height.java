package wainbook.engineering.weights.weighing;

import java.util.List;

/** The height of a vehicle’s centre of gravity, and what it means for rolling over. From memory; statics, any textbook. */
public final class Height {

    private Height() {}

    /** A mass at a height; below nought for what came out. */
    public record Mass(double kg, double heightM) {}

    public static double byPartsM(List<Mass> masses) {
        double moment =
                masses.stream().mapToDouble(mass -> mass.kg() * mass.heightM()).sum();
        return moment / masses.stream().mapToDouble(Mass::kg).sum();
    }

    /**
     * By lifting the rear end: h = r + (F_tilt − F_flat) L / (W tan t).
     *
     * @param axleHeightM r, the rolling radius of the wheels
     * @param tiltDegrees above 0
     */
    public static double byTiltM(
            double axleHeightM, double flatKg, double tiltedKg, double wheelbaseM, double totalKg, double tiltDegrees) {
        return axleHeightM + (tiltedKg - flatKg) * wheelbaseM / (totalKg * Math.tan(Math.toRadians(tiltDegrees)));
    }

    /** @return T / (2 h), of a rigid body: springs and tyres take off perhaps a fifth */
    public static double stabilityFactor(double trackM, double heightM) {
        return trackM / (2 * heightM);
    }

    /** @return degrees at which a rigid body rolls over */
    public static double rolloverDegrees(double trackM, double heightM) {
        return Math.toDegrees(Math.atan(stabilityFactor(trackM, heightM)));
    }
}

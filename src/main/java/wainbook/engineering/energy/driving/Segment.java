package wainbook.engineering.energy.driving;

import wainbook.engineering.energy.resistance.Gravity;

/**
 * A part of a duty as an operator can describe it: what traction puts in is what resistances and brakes take out, plus the climb.
 * Against the second-by-second scheme on two published cycles it reads 0.8 to 1.9 % low (computed).
 *
 * @param distanceKm above nought
 * @param meanKmh standstill counted in, above nought
 * @param stopKmh speed before a stop
 * @param lostShare of the kinetic energy that rolling and air take while slowing down, 0 to 1
 * @param effectiveKmh steady speed with as much air drag, somewhat below the cruising speed
 * @param upM climbed in all; likewise {@code downM}
 * @param steepDownM the part of downM on slopes where the vehicle has to be braked
 * @param steepSlope their mean, rise over run
 */
public record Segment(
        double distanceKm,
        double meanKmh,
        double stopsPerKm,
        double stopKmh,
        double lostShare,
        double effectiveKmh,
        double upM,
        double downM,
        double steepDownM,
        double steepSlope) {

    /** What is left of the regeneration after it fades out at low speed: 0.965 on a truck's trace, 0.92 on a bus's (computed). */
    public static final double AFTER_FADING = 0.96;

    private static final double KMH_A_MPS = 3.6;
    private static final double METRES_A_KM = 1000;
    private static final double JOULES_A_KWH = 3.6e6;

    /** On the level. */
    public Segment(
            double distanceKm,
            double meanKmh,
            double stopsPerKm,
            double stopKmh,
            double lostShare,
            double effectiveKmh) {
        this(distanceKm, meanKmh, stopsPerKm, stopKmh, lostShare, effectiveKmh, 0, 0, 0, 0);
    }

    /** @return kWh at the packs, with all consumers of the vehicle for as long as it takes; loss inside the packs not counted */
    public double energyKwh(Vehicle vehicle) {
        return spent(vehicle).totalKwh();
    }

    /** Where it goes; loss inside the packs not counted. */
    public Spent spent(Vehicle vehicle) {
        double weightN = vehicle.massKg() * Gravity.MPS2;
        double rollingJ = distanceM() * rollingN(vehicle);
        double airJ = distanceM() * airN(vehicle);
        double climbJ = weightN * (upM - downM);
        double brakedJ = brakedJ(vehicle);
        double drawnJ = (rollingJ + airJ + climbJ + brakedJ) / vehicle.tractionEfficiency();
        double backJ = brakedJ * vehicle.regenerationShare() * vehicle.regenerationEfficiency() * AFTER_FADING;
        double consumedJ = vehicle.consumersW() * hours() * 3600;
        return new Spent(rollingJ, airJ, climbJ, brakedJ, drawnJ, backJ, consumedJ, 0).times(1 / JOULES_A_KWH);
    }

    public double hours() {
        return distanceKm / meanKmh;
    }

    /** @return what the brakes take, friction and motor together */
    double brakedJ(Vehicle vehicle) {
        double speed = stopKmh / KMH_A_MPS;
        double stopJ = vehicle.massKg() * vehicle.rotatingFactor() * speed * speed / 2 * (1 - lostShare);
        double rollsAlone = (rollingN(vehicle) + airN(vehicle)) / (vehicle.massKg() * Gravity.MPS2);
        double steep = steepDownM > 0 ? Math.max(0, 1 - rollsAlone / steepSlope) : 0;
        return stopsPerKm * distanceKm * stopJ + vehicle.massKg() * Gravity.MPS2 * steepDownM * steep;
    }

    private static double rollingN(Vehicle vehicle) {
        return vehicle.massKg() * Gravity.MPS2 * vehicle.rolling();
    }

    private double airN(Vehicle vehicle) {
        return vehicle.airN(effectiveKmh / KMH_A_MPS);
    }

    private double distanceM() {
        return distanceKm * METRES_A_KM;
    }
}

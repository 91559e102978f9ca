package wainbook.engineering.energy.driving;

/**
 * What can be said of a trace without a vehicle.
 *
 * @param meanKmh standstill counted in
 * @param stops times it comes to rest
 * @param idleS seconds of standstill
 * @param positiveKineticMps2 Σ max(0, v² gained) by the distance: how much it is brought to speed again; 0 without a way
 * @param effectiveSquaredM2s2 Σv³ / Σv: the square of the steady speed with as much air drag; 0 without a way
 * @param ascentM and {@code descentM}: both counted upwards from nought
 */
public record Kinematics(
        double distanceKm,
        int seconds,
        double meanKmh,
        int stops,
        int idleS,
        double positiveKineticMps2,
        double effectiveSquaredM2s2,
        double ascentM,
        double descentM) {

    private static final double METRES_A_KM = 1000;
    private static final double KMH_A_MPS = 3.6;

    public static Kinematics of(Trace trace) {
        double metres = 0;
        double cubes = 0;
        double gained = 0;
        double up = 0;
        double down = 0;
        int stops = 0;
        int idle = 0;
        for (int k = 1; k <= trace.intervals(); k++) {
            Motion motion = trace.motion(k);
            metres += motion.speedMps();
            cubes += motion.speedMps() * motion.speedMps() * motion.speedMps();
            gained += Math.max(0, trace.gain(k));
            up += Math.max(0, motion.sine()) * motion.speedMps();
            down += Math.max(0, -motion.sine()) * motion.speedMps();
            stops += trace.stops(k) ? 1 : 0;
            idle += motion.stands() ? 1 : 0;
        }
        return new Kinematics(
                metres / METRES_A_KM,
                trace.intervals(),
                metres / trace.intervals() * KMH_A_MPS,
                stops,
                idle,
                metres > 0 ? gained / metres : 0,
                metres > 0 ? cubes / metres : 0,
                up,
                down);
    }
}

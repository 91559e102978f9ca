package wainbook.engineering.energy.driving;

/**
 * One second of a way.
 *
 * @param wheelW at the wheels, below nought while braking
 * @param drawnW between pack and motor
 * @param terminalW with the consumers, at the terminals of the packs
 */
public record Second(Motion motion, Forces forces, double wheelW, double drawnW, double terminalW) {

    /** @param full the packs take nothing more of what braking gives */
    public static Second of(Motion motion, Vehicle vehicle, boolean full) {
        Forces forces = vehicle.forces(motion);
        double wheelW = forces.sumN() * motion.speedMps();
        double drawnW = vehicle.drawnW(wheelW, motion.speedMps(), full);
        return new Second(motion, forces, wheelW, drawnW, drawnW + vehicle.consumersW());
    }
}

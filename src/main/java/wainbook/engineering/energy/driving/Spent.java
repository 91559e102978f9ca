package wainbook.engineering.energy.driving;

/**
 * Where the energy of a part of a day went, in kWh. At the wheels traction is what rolling, air, climb and braking take; from the packs goes
 * what the motor draws, less what comes back, with consumers and the heat inside the packs.
 *
 * @param climbKwh below nought where the way leads down on the whole
 * @param brakedKwh kinetic energy and descent that brakes and motor take, at the wheels
 * @param drawnKwh from the packs to the motor
 * @param backKwh from the motor to the packs
 */
public record Spent(
        double rollingKwh,
        double airKwh,
        double climbKwh,
        double brakedKwh,
        double drawnKwh,
        double backKwh,
        double consumersKwh,
        double packLossKwh) {

    public static final Spent NOTHING = new Spent(0, 0, 0, 0, 0, 0, 0, 0);

    /** A way from rest to rest leaves no kinetic energy; what another leaves is counted with the brakes. */
    static Spent of(Energies energies) {
        return new Spent(
                energies.rollingKwh(),
                energies.airKwh(),
                energies.gradeKwh(),
                energies.brakingKwh() + energies.kineticKwh(),
                energies.drawnKwh(),
                energies.regeneratedKwh(),
                energies.consumersKwh(),
                energies.lossKwh());
    }

    public double tractionKwh() {
        return rollingKwh + airKwh + climbKwh + brakedKwh;
    }

    /** @return heat in inverter, motor and gears while pulling */
    public double drivelineKwh() {
        return drawnKwh - tractionKwh();
    }

    /** @return out of the packs */
    public double totalKwh() {
        return drawnKwh - backKwh + consumersKwh + packLossKwh;
    }

    public Spent times(double factor) {
        return new Spent(
                factor * rollingKwh,
                factor * airKwh,
                factor * climbKwh,
                factor * brakedKwh,
                factor * drawnKwh,
                factor * backKwh,
                factor * consumersKwh,
                factor * packLossKwh);
    }

    public Spent and(Spent other) {
        return new Spent(
                rollingKwh + other.rollingKwh,
                airKwh + other.airKwh,
                climbKwh + other.climbKwh,
                brakedKwh + other.brakedKwh,
                drawnKwh + other.drawnKwh,
                backKwh + other.backKwh,
                consumersKwh + other.consumersKwh,
                packLossKwh + other.packLossKwh);
    }
}

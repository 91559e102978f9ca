package wainbook.engineering.energy.driving;

/**
 * Where the energy of a way went. At the wheels traction is what rolling, air, grade, kinetic energy and braking take.
 *
 * @param packKwh out of the cells, with their own loss
 * @param tractionKwh and {@code brakingKwh}: at the wheels, both counted upwards from nought
 * @param gradeKwh below nought if the way leads down on the whole; likewise {@code kineticKwh} if it ends slower
 * @param drawnKwh from the pack to the motor
 * @param regeneratedKwh from the motor to the pack
 * @param consumersKwh auxiliaries, heating and power take-off
 * @param lossKwh heat inside the packs
 * @param highestW and {@code lowestW}: power at the terminals of the packs
 * @param rmsA what heats packs and cables
 */
public record Energies(
        double packKwh,
        double tractionKwh,
        double rollingKwh,
        double airKwh,
        double gradeKwh,
        double kineticKwh,
        double brakingKwh,
        double drawnKwh,
        double regeneratedKwh,
        double consumersKwh,
        double lossKwh,
        double highestW,
        double lowestW,
        double rmsA) {}

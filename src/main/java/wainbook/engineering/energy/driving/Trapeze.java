package wainbook.engineering.energy.driving;

import java.util.List;
import wainbook.engineering.energy.resistance.Gravity;

/**
 * From rest to a speed, along it, and to rest again, in closed form: what standardised on-road tests of buses are made of.
 *
 * @param speedKmh that is reached
 * @param accelerationMps2 and {@code brakingMps2}: both above nought
 * @param lengthM from rest to rest; long enough to reach the speed
 */
public record Trapeze(double speedKmh, double accelerationMps2, double brakingMps2, double lengthM) {

    private static final double KMH_A_MPS = 3.6;
    private static final double JOULES_A_KWH = 3.6e6;

    /** @return seconds from rest to rest */
    public double seconds() {
        return speed() / accelerationMps2 + speed() / brakingMps2 + steadyM() / speed();
    }

    public double rollingJ(Vehicle vehicle) {
        return vehicle.massKg() * Gravity.MPS2 * vehicle.rolling() * lengthM;
    }

    public double airJ(Vehicle vehicle) {
        double square = speed() * speed();
        return vehicle.airN(1)
                * (square * square / (4 * accelerationMps2) + square * steadyM() + square * square / (4 * brakingMps2));
    }

    /** @return what rolling and air leave of the kinetic energy for the brakes */
    public double brakedJ(Vehicle vehicle) {
        double square = speed() * speed();
        double slowingM = square / (2 * brakingMps2);
        return vehicle.massKg() * vehicle.rotatingFactor() * square / 2
                - vehicle.massKg() * Gravity.MPS2 * vehicle.rolling() * slowingM
                - vehicle.airN(1) * square * square / (4 * brakingMps2);
    }

    public double tractionJ(Vehicle vehicle) {
        return rollingJ(vehicle) + airJ(vehicle) + brakedJ(vehicle);
    }

    /**
     * Several one after the other, with regeneration down to standstill and without loss inside the packs.
     *
     * @param standingS in all
     * @return kWh at the packs
     */
    public static double energyKwh(List<Trapeze> trapezes, double standingS, Vehicle vehicle) {
        double back = vehicle.regenerationShare() * vehicle.regenerationEfficiency();
        double driven = trapezes.stream()
                .mapToDouble(one -> one.tractionJ(vehicle) / vehicle.tractionEfficiency() - one.brakedJ(vehicle) * back)
                .sum();
        return (driven + vehicle.consumersW() * seconds(trapezes, standingS)) / JOULES_A_KWH;
    }

    /** @param standingS in all */
    public static double seconds(List<Trapeze> trapezes, double standingS) {
        return standingS + trapezes.stream().mapToDouble(Trapeze::seconds).sum();
    }

    private double speed() {
        return speedKmh / KMH_A_MPS;
    }

    private double steadyM() {
        double square = speed() * speed();
        return lengthM - square / (2 * accelerationMps2) - square / (2 * brakingMps2);
    }
}

package wainbook.engineering.energy.consumers;

/**
 * Heat to keep a cab or saloon warm: Q = (UA + ρ c V̇) (T_in − T_out) − gains.
 *
 * @param lossWPerK through walls and windows
 * @param freshM3PerHour air that is let in, doors counted
 * @param gainsW of people and sun
 */
public record CabinHeat(double lossWPerK, double freshM3PerHour, double insideC, double outsideC, double gainsW) {

    /** ρ · c of air, J/(m³ K). */
    private static final double AIR = 1206;

    /** @return nought where gains suffice */
    public double heatW() {
        double perKelvin = lossWPerK + AIR * freshM3PerHour / 3600;
        return Math.max(0, perKelvin * (insideC - outsideC) - gainsW);
    }

    /** @param performance heat over electric power: about 0.95 for a resistor, 2 to 3 for a heat pump (from memory) */
    public double electricW(double performance) {
        return heatW() / performance;
    }
}

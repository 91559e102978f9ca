package wainbook.engineering.energy.consumers;

/**
 * Oil that is pressed and oil that only goes round, both from the packs: W = p · V / η and P = p · Q / η.
 *
 * @param cycleBar mean pressure of a working cycle
 * @param cycleLitres oil moved by one, there and back
 * @param cycleEfficiency of pump, motor and valves together, above 0 to 1
 * @param idleBar pressure while nothing moves
 * @param idleLitresPerMinute oil that goes round then
 * @param idleEfficiency of pump and motor, above 0 to 1
 */
public record HydraulicWork(
        double cycleBar,
        double cycleLitres,
        double cycleEfficiency,
        double idleBar,
        double idleLitresPerMinute,
        double idleEfficiency) {

    /** A bar is 1e5 Pa and a litre 1e-3 m³. */
    private static final double JOULES_A_BAR_LITRE = 100;

    private static final double JOULES_A_WH = 3600;

    public double cycleWh() {
        return cycleBar * cycleLitres * JOULES_A_BAR_LITRE / cycleEfficiency / JOULES_A_WH;
    }

    public double idleW() {
        return idleBar * idleLitresPerMinute / 60 * JOULES_A_BAR_LITRE / idleEfficiency;
    }

    public double dayKwh(double cycles, double idleHours) {
        return (cycles * cycleWh() + idleHours * idleW()) / 1000;
    }
}

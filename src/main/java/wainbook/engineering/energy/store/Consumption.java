package wainbook.engineering.energy.store;

/**
 * A consumption as somebody wrote it, which may be kilowatt-hours a kilometre or kilometres a kilowatt-hour: near 1 both look right, and
 * a published trial report mixed them up. Show both ranges and ask.
 */
public record Consumption(double figure) {

    /** Exact by definition. */
    public static final double KM_A_MILE = 1.609344;

    public double rangeIfKwhPerKm(double usableKwh) {
        return usableKwh / figure;
    }

    public double rangeIfKmPerKwh(double usableKwh) {
        return usableKwh * figure;
    }

    public static double miles(double km) {
        return km / KM_A_MILE;
    }
}

package wainbook.engineering.specification;

import wainbook.engineering.energy.ChargingTime;

/**
 * A charge from the reserve to the highest state of charge while the vehicle stands. Efficiency by plug as read in a public life-cycle
 * inventory of buses; where the power falls, and to what, from memory.
 *
 * @param powerKw least of charger, cable and site
 * @param standsHours on a usual night
 */
public record Night(double powerKw, double standsHours) {

    public static final double EFFICIENCY = 0.95;
    public static final double FROM = 0.15;
    public static final double TO = 0.95;
    public static final double TAPER = 0.80;
    public static final double END_SHARE = 0.20;

    public double hours(double nominalKwh) {
        return new ChargingTime()
                .of(new ChargingTime.Inputs(nominalKwh, powerKw, EFFICIENCY, FROM, TO, TAPER, END_SHARE))
                .fold(
                        working -> working.results().hours(),
                        impossible -> Double.POSITIVE_INFINITY,
                        faults -> Double.POSITIVE_INFINITY);
    }
}

package wainbook.engineering.balance;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The load that a station keeps with a chance, if its tasks' times are independent and normal: mean + z √Σσ². In whole numbers
 * the solver asks (c − mean)² · 10⁶ ≥ ⌈10⁶ z²⌉ · Σσ², which errs to the safe side by less than a millionth.
 */
public final class Chance {

    static final long MILLION = 1_000_000;

    private Chance() {}

    public static double load(double mean, double variance, double chance) {
        return mean + z(chance) * Math.sqrt(variance);
    }

    static long factor(double chance) {
        double z = Math.max(0, z(chance));
        return (long) Math.ceil(z * z * MILLION);
    }

    private static double z(double chance) {
        return NormalDistribution.of(0, 1).inverseCumulativeProbability(chance);
    }
}

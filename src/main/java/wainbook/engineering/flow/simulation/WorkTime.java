package wainbook.engineering.flow.simulation;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** How long one piece of work takes, in minutes: one uniform number gives one time, and a greater number never a shorter one. */
@FunctionalInterface
public interface WorkTime {

    /** @param u from 0 up to but not 1 */
    double minutes(double u);

    /**
     * @param meanMinutes above 0
     * @param cv standard deviation over mean; heeded by {@link Law#LOGNORMAL} and {@link Law#UNIFORM} alone
     */
    static WorkTime of(Law law, double meanMinutes, double cv) {
        return switch (law) {
            case EXPONENTIAL -> u -> -meanMinutes * Math.log1p(-u);
            case DETERMINISTIC -> u -> meanMinutes;
            case LOGNORMAL -> lognormal(meanMinutes, cv);
            case UNIFORM -> uniform(meanMinutes, cv / Law.WIDEST_UNIFORM * meanMinutes);
        };
    }

    private static WorkTime lognormal(double mean, double cv) {
        double variance = Math.log1p(cv * cv);
        double sigma = Math.sqrt(variance);
        double median = mean * Math.exp(-variance / 2);
        NormalDistribution standard = NormalDistribution.of(0, 1);
        return sigma == 0 ? u -> mean : u -> median * Math.exp(sigma * standard.inverseCumulativeProbability(u));
    }

    private static WorkTime uniform(double mean, double half) {
        return u -> mean - half + 2 * half * u;
    }
}

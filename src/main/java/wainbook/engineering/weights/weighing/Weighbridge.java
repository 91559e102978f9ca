package wainbook.engineering.weights.weighing;

import wainbook.engineering.Source;

/**
 * A weighbridge of class III and how far it may be off.
 *
 * @param intervalKg its verification interval e
 */
public record Weighbridge(double intervalKg) {

    public static final Source SOURCE = Source.seen(
            "SI 1995/1907, Schedule 2 paragraph 4; the same in OIML R 76", "errors of class III, twice in service");

    private static final double ROOT_3 = Math.sqrt(3);
    private static final double ROOT_12 = Math.sqrt(12);

    /** @return permitted at verification: half an interval up to 500 of them, one up to 2000, one and a half above */
    public double verificationErrorKg(double loadKg) {
        double intervals = loadKg / intervalKg;
        if (intervals <= 500) {
            return 0.5 * intervalKg;
        }
        return (intervals <= 2000 ? 1 : 1.5) * intervalKg;
    }

    /** @return permitted in service */
    public double serviceErrorKg(double loadKg) {
        return 2 * verificationErrorKg(loadKg);
    }

    /**
     * @param repeatabilityKg standard deviation of weighing the same again
     * @return standard uncertainty √((MPE/√3)² + (e/√12)² + s²)
     */
    public double uKg(double loadKg, double repeatabilityKg) {
        return Math.sqrt(Math.pow(serviceErrorKg(loadKg) / ROOT_3, 2)
                + Math.pow(intervalKg / ROOT_12, 2)
                + repeatabilityKg * repeatabilityKg);
    }
}

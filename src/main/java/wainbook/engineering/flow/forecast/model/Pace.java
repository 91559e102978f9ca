package wainbook.engineering.flow.forecast.model;

/**
 * How much longer than usual one vehicle takes at every stage: a heavy donor is slow everywhere. One factor is drawn for the vehicle
 * and multiplies its work at all stages; its logarithm follows the normal law.
 *
 * @param median 1 for a usual vehicle
 * @param sigma standard deviation of its logarithm; 0 if vehicles do not differ, or this one is known
 */
public record Pace(double median, double sigma) {

    public static final Pace USUAL = new Pace(1, 0);

    public Pace {
        if (!(median > 0) || !(sigma >= 0)) {
            throw new IllegalArgumentException("no vehicle goes at the pace " + median + ", sigma " + sigma);
        }
    }

    /**
     * What is known of a vehicle's pace after some of its stages: the mean of their residuals, shrunk by σ_a² / (σ_a² + σ² / n).
     *
     * @param between standard deviation of the logarithms of vehicles' factors
     * @param within standard deviation of the logarithm of one stage's time about its vehicle's factor
     * @param meanLog mean logarithm of actual over usual time at the stages finished
     * @param stages how many
     */
    public static Pace after(double between, double within, double meanLog, int stages) {
        double variance = between * between;
        if (variance == 0) {
            return USUAL;
        }
        double noise = stages == 0 ? Double.POSITIVE_INFINITY : within * within / stages;
        double weight = variance / (variance + noise);
        return new Pace(stages == 0 ? 1 : Math.exp(weight * meanLog), Math.sqrt(variance * (1 - weight)));
    }
}

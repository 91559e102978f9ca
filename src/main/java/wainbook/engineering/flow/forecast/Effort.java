package wainbook.engineering.flow.forecast;

/**
 * How much a forecast may cost. The budget is counted in replications, never in time, so that the same question has the same answer on
 * any machine.
 *
 * @param seed of all random numbers: the same for forecasts that are to be compared
 * @param least replications in any case
 * @param most replications, whatever they leave open
 * @param toleranceMinutes it is enough when the 95 % interval of every vehicle's 80 % quantile is no wider, in working minutes
 * @param drawn of the replications, for the times at the stages and what time goes into
 * @param parallel on all cores; changes no figure
 */
public record Effort(long seed, int least, int most, double toleranceMinutes, int drawn, boolean parallel) {

    private static final int LEAST = 2000;
    private static final int MOST = 10_000;
    private static final double TOLERANCE_MINUTES = 10;
    private static final int DRAWN = 1000;

    public Effort {
        if (least < 1 || most < least || drawn < 1 || !(toleranceMinutes >= 0)) {
            throw new IllegalArgumentException("no forecast comes of " + least + " to " + most + " replications");
        }
    }

    public static Effort usual(long seed) {
        return new Effort(seed, LEAST, MOST, TOLERANCE_MINUTES, DRAWN, true);
    }

    /** So many, no more and no fewer. */
    public static Effort exactly(long seed, int replications) {
        return new Effort(seed, replications, replications, 0, Math.min(DRAWN, replications), true);
    }

    public Effort onOneCore() {
        return new Effort(seed, least, most, toleranceMinutes, drawn, false);
    }
}

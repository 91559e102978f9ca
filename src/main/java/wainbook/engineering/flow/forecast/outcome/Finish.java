package wainbook.engineering.flow.forecast.outcome;

import java.util.Arrays;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.engineering.flow.score.Quantile;
import wainbook.engineering.flow.score.RankInterval;

/**
 * When a vehicle finishes, in minutes since the origin: a draw for each replication. Positive infinity is a draw for which the
 * calendars given were too short.
 */
public final class Finish {

    private static final double CONFIDENCE = 0.95;

    private final boolean known;
    private final double[] byReplication;
    private final double[] sorted;

    private Finish(boolean known, double[] byReplication) {
        this.known = known;
        this.byReplication = byReplication;
        this.sorted = byReplication.clone();
        Arrays.sort(sorted);
    }

    public static Finish drawn(double[] byReplication) {
        return new Finish(false, byReplication);
    }

    /** It has finished. */
    public static Finish known(double minute) {
        return new Finish(true, new double[] {minute});
    }

    public boolean known() {
        return known;
    }

    public int draws() {
        return sorted.length;
    }

    /** Rising. */
    public double[] sorted() {
        return sorted.clone();
    }

    /** As the replications come, so that those of two forecasts with one seed pair up. */
    public double[] inOrder() {
        return byReplication.clone();
    }

    public double mean() {
        return Arrays.stream(sorted).average().orElseThrow();
    }

    /**
     * Of type 7.
     *
     * @param p from 0 to 1
     */
    public double quantile(double p) {
        return Quantile.TYPE_7.of(sorted, p);
    }

    public double median() {
        return quantile(0.5);
    }

    /** The middle that holds so large a share: 0.5, 0.8, 0.95. */
    public Span interval(double held) {
        return new Span(quantile((1 - held) / 2), quantile((1 + held) / 2));
    }

    /** Between which draws the true quantile of the model lies with 95 %; its ends those of all draws where they are too few. */
    public Span certainty(double p) {
        if (known) {
            return new Span(sorted[0], sorted[0]);
        }
        var ranks = RankInterval.of(sorted.length, p, CONFIDENCE);
        return new Span(sorted[Math.max(1, ranks.lower()) - 1], sorted[Math.min(sorted.length, ranks.upper()) - 1]);
    }

    /** Of being finished on or before this minute. */
    public Odds by(double minute) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return known ? Odds.certain(low > 0) : Odds.of(low, sorted.length);
    }

    /**
     * How much later than in another forecast of the same seed, replication by replication, with its 95 % interval: as many draws as
     * both have, those without an end left out.
     */
    public PairedDifference laterThan(Finish other) {
        return laterThan(other, WorkingTime.always());
    }

    /** The same in minutes of a working time. */
    public PairedDifference laterThan(Finish other, WorkingTime time) {
        int n = Math.min(byReplication.length, other.byReplication.length);
        double[] before = new double[n];
        double[] after = new double[n];
        int pairs = 0;
        for (int i = 0; i < n; i++) {
            if (Double.isFinite(byReplication[i]) && Double.isFinite(other.byReplication[i])) {
                before[pairs] = worked(time, other.byReplication[i]);
                after[pairs] = worked(time, byReplication[i]);
                pairs++;
            }
        }
        return PairedDifference.of(Arrays.copyOf(before, pairs), Arrays.copyOf(after, pairs), CONFIDENCE);
    }

    private static double worked(WorkingTime time, double minute) {
        return time.equals(WorkingTime.always()) ? minute : time.worked(minute);
    }
}

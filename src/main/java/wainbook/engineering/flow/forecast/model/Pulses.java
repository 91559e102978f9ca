package wainbook.engineering.flow.forecast.model;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * The moments at which a paced line moves. A vehicle stays at a stage for at least as many of them as the stage has stations, and moves
 * when the last of these has come and it is ready, whichever is later: the line waits for the slowest. Without any vehicles move when
 * they are ready.
 */
public final class Pulses {

    private static final Pulses NONE = new Pulses(new double[0], 0);

    private final double[] minutes;
    private final double earlyMinutes;

    private Pulses(double[] minutes, double earlyMinutes) {
        this.minutes = minutes;
        this.earlyMinutes = earlyMinutes;
    }

    public static Pulses none() {
        return NONE;
    }

    /**
     * @param minutes since the origin, rising
     * @param earlyMinutes a vehicle that comes so little before a moment came with it
     */
    public static Pulses at(double[] minutes, double earlyMinutes) {
        double[] sorted = minutes.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? NONE : new Pulses(sorted, earlyMinutes);
    }

    /** The same with more of them, where there are any. */
    public Pulses and(double... more) {
        return isNone()
                ? this
                : at(
                        DoubleStream.concat(Arrays.stream(minutes), Arrays.stream(more))
                                .toArray(),
                        earlyMinutes);
    }

    public boolean isNone() {
        return minutes.length == 0;
    }

    /** Rising. */
    public double[] minutes() {
        return minutes.clone();
    }

    public double earlyMinutes() {
        return earlyMinutes;
    }

    /** The one that comes so many after a vehicle came; positive infinity beyond the last, the minute itself without any. */
    public double after(double came, int pulses) {
        if (isNone()) {
            return came;
        }
        int low = 0;
        int high = minutes.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (minutes[middle] <= came + earlyMinutes) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        int at = low + pulses - 1;
        return at < minutes.length ? minutes[at] : Double.POSITIVE_INFINITY;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pulses that
                && earlyMinutes == that.earlyMinutes
                && Arrays.equals(minutes, that.minutes);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(minutes);
    }

    @Override
    public String toString() {
        return "Pulses" + Arrays.toString(minutes);
    }
}

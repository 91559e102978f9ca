package wainbook.engineering.flow.score;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * By how much an interval has to be widened to hold what it says, from how far past outcomes lay outside theirs: the
 * ⌈(n + 1) · held⌉-th smallest excess max(low − y, y − high), negative inside (split conformal prediction, from memory).
 */
public final class Widening {

    private Widening() {}

    /**
     * @param excess of each past forecast
     * @param held 0.8 for an interval of 80 %
     * @return added to both sides; narrows if negative; empty where there are too few forecasts to say
     */
    public static OptionalDouble of(double[] excess, double held) {
        int rank = rank(excess.length, held);
        if (rank > excess.length) {
            return OptionalDouble.empty();
        }
        double[] sorted = excess.clone();
        Arrays.sort(sorted);
        return OptionalDouble.of(sorted[rank - 1]);
    }

    /** Less a hair, since 51 · 0.8 is a little more than 40.8 as doubles and 20 · 0.8 must stay 16. */
    public static int rank(int forecasts, double held) {
        return (int) Math.ceil((forecasts + 1.0) * held - 1e-9);
    }
}

package wainbook.engineering.flow.forecast.model;

import java.util.Arrays;
import java.util.List;

/** How long something takes, drawn by one uniform number: a greater number never gives a shorter time. */
public sealed interface Minutes permits Minutes.Certain, Minutes.Drawn, Lognormal {

    /** @param u from 0 up to but not 1 */
    double at(double u);

    /**
     * What is still left after so many minutes, given that it is not over.
     *
     * @param u from 0 up to but not 1
     */
    double left(double elapsed, double u);

    /** The chance that it takes longer than this. */
    double beyond(double elapsed);

    /** The same, each so many times as long. */
    Minutes times(double factor);

    Minutes NONE = new Certain(0);

    /** Always the same; nothing is left when it is over. */
    record Certain(double minutes) implements Minutes {
        public Certain {
            if (!(minutes >= 0)) {
                throw new IllegalArgumentException("no time takes " + minutes + " minutes");
            }
        }

        @Override
        public Minutes times(double factor) {
            return new Certain(minutes * factor);
        }

        @Override
        public double at(double u) {
            return minutes;
        }

        @Override
        public double left(double elapsed, double u) {
            return Math.max(0, minutes - elapsed);
        }

        @Override
        public double beyond(double elapsed) {
            return minutes > elapsed ? 1 : 0;
        }
    }

    /**
     * One of these times, each as likely. What is left is drawn among those that took longer; if fewer than {@link #FEW} of
     * several did, from the tail of a lognormal law fitted to all of them.
     */
    final class Drawn implements Minutes {

        /** Below so many the history says nothing of what is left. */
        public static final int FEW = 5;

        private final double[] sorted;
        private final Lognormal fitted;

        private Drawn(double[] sorted) {
            if (sorted.length == 0 || !(sorted[0] >= 0) || !Double.isFinite(sorted[sorted.length - 1])) {
                throw new IllegalArgumentException("times are drawn from at least one, none negative");
            }
            this.sorted = sorted;
            this.fitted = Lognormal.fitted(sorted);
        }

        public static Drawn of(List<Double> values) {
            return new Drawn(
                    values.stream().mapToDouble(Double::doubleValue).sorted().toArray());
        }

        /** Rising. */
        public double[] values() {
            return sorted.clone();
        }

        @Override
        public Minutes times(double factor) {
            return new Drawn(Arrays.stream(sorted).map(one -> one * factor).toArray());
        }

        @Override
        public double at(double u) {
            return sorted[(int) (u * sorted.length)];
        }

        @Override
        public double left(double elapsed, double u) {
            int over = over(elapsed);
            int longer = sorted.length - over;
            if (over == 0 || longer >= FEW) {
                return sorted[over + (int) (u * longer)] - elapsed;
            }
            return fitted.left(elapsed, u);
        }

        @Override
        public double beyond(double elapsed) {
            int over = over(elapsed);
            int longer = sorted.length - over;
            return over == 0 || longer >= FEW ? (double) longer / sorted.length : fitted.beyond(elapsed);
        }

        /** How many did not take longer. */
        private int over(double elapsed) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (sorted[middle] <= elapsed) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Drawn that && Arrays.equals(sorted, that.sorted);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(sorted);
        }

        @Override
        public String toString() {
            return "one of " + sorted.length + " times";
        }
    }
}

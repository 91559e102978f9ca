package wainbook.engineering.flow.forecast.model;

/** Rising bounds, and for buckets of equal width the first bound that can matter there. */
final class Buckets {

    private final double[] bounds;
    private final double begin;
    private final double scale;
    private final int[] first;

    /** @param begin where the first bucket begins; the last ends at the last bound */
    Buckets(double[] bounds, double begin, int wanted) {
        this.bounds = bounds;
        this.begin = begin;
        int n = bounds.length;
        double width = n == 0 ? 0 : bounds[n - 1] - begin;
        this.scale = width > 0 ? wanted / width : 0;
        this.first = new int[wanted + 1];
        int bound = 0;
        for (int bucket = 0; bucket <= wanted; bucket++) {
            while (bound < n && scale > 0 && (bounds[bound] - begin) * scale < bucket - 1e-6) {
                bound++;
            }
            first[bucket] = Math.min(bound, Math.max(0, n - 1));
        }
    }

    /** Number of the first bound above this value; of all bounds if none is. */
    int after(double value) {
        int i = near(value);
        while (i < bounds.length && bounds[i] <= value) {
            i++;
        }
        return i;
    }

    /** Number of the first bound that is not below this value; of all bounds if none is. */
    int reaching(double value) {
        int i = near(value);
        while (i < bounds.length && bounds[i] < value) {
            i++;
        }
        return i;
    }

    private int near(double value) {
        int bucket = (int) ((value - begin) * scale);
        return bucket <= 0 ? 0 : first[Math.min(bucket, first.length - 1)];
    }
}

package wainbook.engineering.energy.store;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How far the need of a day may be off, each as a standard deviation of its logarithm, all independent: need = median · e^Z.
 *
 * @param model of the calculation itself; what telematics takes away
 */
public record NeedErrors(double model, double driver, double weather, double distance, double heating) {

    /** Shares of an order without telematics: an engineer’s estimate, from memory. */
    public static final NeedErrors WITHOUT_TELEMATICS = new NeedErrors(0.10, 0.08, 0.06, 0.05, 0.03);

    public double sigma() {
        return Math.sqrt(shares().map(share -> share * share).sum());
    }

    /**
     * The same odds as {@link NeedOdds} by trying: one day a draw, its five errors drawn one by one.
     *
     * @return share of the days on which the need stays within what there is
     */
    public double drawnOdds(double usableKwh, double medianKwh, int draws, long seed) {
        var random = new SplittableRandom(seed);
        double[] shares = shares().toArray();
        long met = Stream.generate(() -> shares)
                .limit(draws)
                .mapToDouble(all -> Arrays.stream(all)
                        .map(share -> share * random.nextGaussian())
                        .sum())
                .filter(error -> medianKwh * Math.exp(error) <= usableKwh)
                .count();
        return (double) met / draws;
    }

    private DoubleStream shares() {
        return DoubleStream.of(model, driver, weather, distance, heating);
    }
}

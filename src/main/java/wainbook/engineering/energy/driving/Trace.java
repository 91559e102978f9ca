package wainbook.engineering.energy.driving;

import java.util.Arrays;
import java.util.List;

/** Speed and gradient of a way, one sample a second. Interval 1 ends at the second sample. */
public final class Trace {

    private static final double KMH_A_MPS = 3.6;

    private final double[] speedMps;
    private final double[] gradient;

    /**
     * @param speedKmh at least two samples, none below nought
     * @param gradient rise over run, as many
     * @throws IllegalArgumentException if they are not as many, or fewer than two
     */
    public Trace(List<Double> speedKmh, List<Double> gradient) {
        if (speedKmh.size() != gradient.size() || speedKmh.size() < 2) {
            throw new IllegalArgumentException("a trace has as many gradients as speeds, and at least two of each");
        }
        this.speedMps = speedKmh.stream().mapToDouble(kmh -> kmh / KMH_A_MPS).toArray();
        this.gradient = gradient.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** @return how many seconds it lasts */
    public int intervals() {
        return speedMps.length - 1;
    }

    public double fastestKmh() {
        return Arrays.stream(speedMps).max().orElseThrow() * KMH_A_MPS;
    }

    /** @param k from 1 to {@link #intervals} */
    public Motion motion(int k) {
        return new Motion(
                speedMps[k] - speedMps[k - 1],
                (speedMps[k] + speedMps[k - 1]) / 2,
                (gradient[k] + gradient[k - 1]) / 2);
    }

    /** Whether the vehicle comes to rest at the end of this second. */
    boolean stops(int k) {
        return speedMps[k] == 0 && speedMps[k - 1] > 0;
    }

    /** @return v² at the end of the way less v² at its beginning, m²/s² */
    double gain() {
        double last = speedMps[speedMps.length - 1];
        return last * last - speedMps[0] * speedMps[0];
    }

    /** @return v² at its end less v² at its beginning, m²/s² */
    double gain(int k) {
        return speedMps[k] * speedMps[k] - speedMps[k - 1] * speedMps[k - 1];
    }
}

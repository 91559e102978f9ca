package wainbook.engineering.weights.axle;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Axles close together that share their load in a fixed way; an axle alone is a group of one. A group acts at its effective centre: the
 * places of its axles, each by its share.
 */
public record AxleGroup(List<Axle> axles) {

    private static final double SUM_OF_SHARES = 1e-9;

    /** @throws IllegalArgumentException if there is no axle, or the shares do not add up to 1 */
    public AxleGroup {
        axles = List.copyOf(axles);
        double sum = axles.stream().mapToDouble(Axle::share).sum();
        if (axles.isEmpty() || Math.abs(sum - 1) > SUM_OF_SHARES) {
            throw new IllegalArgumentException("the shares of a group add up to 1, not " + sum);
        }
    }

    /** @return metres behind the foremost axle: L₁ + s · q for a tandem of spacing s whose second axle takes q */
    public double centreM() {
        return axles.stream()
                .mapToDouble(axle -> axle.fromFrontM() * axle.share())
                .sum();
    }

    /** The load of each axle under a load of the group. */
    public List<Double> loadsKg(double groupKg) {
        return axles.stream().map(axle -> groupKg * axle.share()).toList();
    }

    /**
     * The most that the group may carry so that it and each of its axles keep to what they may.
     *
     * @param axleKg what each axle may carry, in their order
     */
    public double limitKg(double groupKg, List<Double> axleKg) {
        double byAxle = IntStream.range(0, axles.size())
                .filter(i -> axles.get(i).share() > 0)
                .mapToDouble(i -> axleKg.get(i) / axles.get(i).share())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        return Math.min(groupKg, byAxle);
    }

    public boolean lifts() {
        return axles.stream().anyMatch(Axle::lifts) && axles.stream().anyMatch(axle -> !axle.lifts());
    }

    /** What stays on the road when every axle that can be lifted is; the others share as they did among themselves. */
    public AxleGroup lifted() {
        List<Axle> down = axles.stream().filter(axle -> !axle.lifts()).toList();
        double sum = down.stream().mapToDouble(Axle::share).sum();
        return new AxleGroup(
                down.stream().map(axle -> axle.taking(axle.share() / sum)).toList());
    }

    /** @return of the group’s load, on driven axles */
    public double drivenShare() {
        return axles.stream().filter(Axle::driven).mapToDouble(Axle::share).sum();
    }
}

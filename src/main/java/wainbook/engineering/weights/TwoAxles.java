package wainbook.engineering.weights;

/**
 * A vehicle on a front axle and a rear one, or a rear group taken at its effective centre: forces and moments balance, so a mass at x
 * puts (1 − x / L) of itself on the front and x / L on the rear.
 *
 * @param wheelbaseM L, from the front axle to the rear group’s effective centre
 */
public record TwoAxles(double wheelbaseM, double frontKg, double rearKg) {

    /**
     * @param massKg below nought takes out
     * @param fromFrontM behind the front axle; below nought before it, more than the wheelbase behind the rear one
     */
    public TwoAxles with(double massKg, double fromFrontM) {
        double toRear = massKg * fromFrontM / wheelbaseM;
        return new TwoAxles(wheelbaseM, frontKg + massKg - toRear, rearKg + toRear);
    }

    public double totalKg() {
        return frontKg + rearKg;
    }

    public double steeringShare() {
        return frontKg / totalKg();
    }
}

package wainbook.engineering.energy.driving;

/**
 * How a vehicle moves through one second.
 *
 * @param accelerationMps2 by the difference of its two ends
 * @param speedMps mean of its two ends, so that distance is the trapezoid of the speed
 * @param gradient rise over run, mean of its two ends
 */
public record Motion(double accelerationMps2, double speedMps, double gradient) {

    /** @return cosine of the slope’s angle */
    double cosine() {
        return 1 / Math.sqrt(1 + gradient * gradient);
    }

    /** @return sine of the slope’s angle */
    double sine() {
        return gradient * cosine();
    }

    boolean stands() {
        return speedMps == 0;
    }
}

package wainbook.engineering.weights.axle;

import java.util.stream.DoubleStream;
import wainbook.engineering.weights.TwoAxles;

/**
 * Where a payload lies, spread evenly: unloaded from the rear its middle moves forward, and the front axle may carry more with a part of
 * the load than with all of it.
 *
 * @param middleM of the whole load, behind the front group’s centre
 * @param lengthM of the load; 0 where it all lies in one place
 */
public record LoadSpace(double middleM, double lengthM) {

    /** The vehicle with a part of the payload left, unloaded from the rear. */
    public TwoAxles with(TwoAxles without, double payloadKg, double leftShare) {
        double middle = middleM - lengthM / 2 + leftShare * lengthM / 2;
        return without.with(payloadKg * leftShare, middle);
    }

    /** @return the most that the front group carries, at whatever part of the payload */
    public double worstFrontKg(TwoAxles without, double payloadKg) {
        return DoubleStream.of(0, heaviestFront(without), 1)
                .map(left -> with(without, payloadKg, left).frontKg())
                .max()
                .orElseThrow();
    }

    /** Load on the front is φ · P · (1 − (a + φ · l / 2) / L): its derivative is nought at φ = (L − a) / l. */
    private double heaviestFront(TwoAxles without) {
        double foremost = middleM - lengthM / 2;
        return lengthM > 0 ? Math.max(0, Math.min(1, (without.wheelbaseM() - foremost) / lengthM)) : 1;
    }
}

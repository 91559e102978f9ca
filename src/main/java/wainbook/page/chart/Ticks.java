package wainbook.page.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Round figures along an axis: steps of 1, 2 or 5 times a power of ten. */
final class Ticks {

    private Ticks() {}

    /** Those within an interval, about so many of them. */
    static List<BigDecimal> within(double least, double most, int about) {
        BigDecimal step = step((most - least) / about);
        var ticks = new ArrayList<BigDecimal>();
        BigDecimal tick = step.multiply(BigDecimal.valueOf(Math.ceil(least / step.doubleValue())));
        while (tick.doubleValue() <= most) {
            ticks.add(tick);
            tick = tick.add(step);
        }
        return ticks;
    }

    private static BigDecimal step(double rough) {
        int power = (int) Math.floor(Math.log10(rough));
        BigDecimal unit = BigDecimal.ONE.scaleByPowerOfTen(power);
        for (int times : new int[] {1, 2, 5}) {
            BigDecimal step = unit.multiply(BigDecimal.valueOf(times));
            if (step.doubleValue() >= rough) {
                return step;
            }
        }
        return unit.scaleByPowerOfTen(1);
    }
}

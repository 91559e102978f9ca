package wainbook.quality.record.made;

import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.quality.record.made.Usual.Spread;

/** How seldom written values agree where all is well: each is normal with the usual scatter and rounded to its resolution. */
public final class Chance {

    private Chance() {}

    /** That so many in a row are all one value: Σ p(x)^k over all values that can be written. */
    public static double allEqual(Spread usual, int count) {
        var law = NormalDistribution.of(0, usual.s());
        double sum = 0;
        int most = (int) Math.ceil(6 * usual.s() / usual.resolution());
        for (int step = -most; step <= most; step++) {
            sum += Math.pow(cell(law, step * usual.resolution(), usual.resolution()), count);
        }
        return Math.min(1, sum);
    }

    /** That one is written exactly as the target. */
    public static double is(Spread usual, double target) {
        return cell(NormalDistribution.of(usual.mean(), usual.s()), target, usual.resolution());
    }

    private static double cell(NormalDistribution law, double middle, double width) {
        return law.probability(middle - width / 2, middle + width / 2);
    }
}

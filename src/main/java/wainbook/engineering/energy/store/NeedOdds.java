package wainbook.engineering.energy.store;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Odds that a need stays within what there is, in closed form: p = Φ(ln(usable / median) / σ). */
public record NeedOdds(double sigma) {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    public double met(double usableKwh, double medianKwh) {
        return NORMAL.cumulativeProbability(Math.log(usableKwh / medianKwh) / sigma);
    }

    /** @return how many times the median has to be there for these odds */
    public double factor(double odds) {
        return Math.exp(NORMAL.inverseCumulativeProbability(odds) * sigma);
    }
}

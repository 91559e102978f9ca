package wainbook.engineering.statistics;

import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Where a share of all values lies with a given confidence, by mean and s of n normal values: x̄ ± k2 s with Howe's k2 =
 * √((n − 1)(1 + 1/n) z² / χ²), and to one side x̄ + k1 s with k1 = t(γ; n − 1, z √n) / √n of the noncentral t, by integration.
 */
public final class ToleranceInterval implements Calculation<ToleranceInterval.Inputs, ToleranceInterval.Results> {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
    private static final int POINTS = 2000;
    private static final int HALVINGS = 200;

    /** @param coverage share of all values that shall lie inside */
    public record Inputs(
            @Domain(from = 2, to = 1_000_000) int n,
            double mean,
            @Domain(above = 0) double s,

            @Preset("0.95") @Domain(from = 0.5, to = 0.999999)
            double coverage,

            @Preset("0.95") @Domain(from = 0.5, to = 0.9999) double confidence) {}

    /** @param k2 to both sides; k1 to one side only, where lowerOnly or upperOnly is the end */
    public record Results(double k2, double lower, double upper, double k1, double lowerOnly, double upperOnly) {}

    @Override
    public String name() {
        return "tolerance-interval";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen("NIST/SEMATECH e-Handbook", "7.2.6.3, factors to one and to both sides"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.normalOnly"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double freedom = in.n() - 1.0;
        double z = NORMAL.inverseCumulativeProbability((1 + in.coverage()) / 2);
        double chi = ChiSquaredDistribution.of(freedom).inverseSurvivalProbability(in.confidence());
        double k2 = Math.sqrt(freedom * (1 + 1.0 / in.n()) / chi) * z;
        double k1 = oneSided(in.n(), in.coverage(), in.confidence());
        return found(
                new Results(
                        k2,
                        in.mean() - k2 * in.s(),
                        in.mean() + k2 * in.s(),
                        k1,
                        in.mean() - k1 * in.s(),
                        in.mean() + k1 * in.s()),
                Sentence.brief(
                        "engineering.tolerance-interval.none",
                        in.coverage(),
                        in.mean() - k2 * in.s(),
                        in.mean() + k2 * in.s(),
                        in.confidence()),
                Step.of(
                        "bothSides",
                        "k2 = √((n − 1) · (1 + 1/n) · z² / χ²)",
                        k2,
                        "",
                        "n = %s, z = %s, χ² = %s",
                        in.n(),
                        z,
                        chi),
                Step.of("oneSide", "k1 = t(γ; n − 1, z · √n) / √n", k1, "", "n = %s", in.n()));
    }

    /** The k for which P(T ≤ k √n) is the confidence, by halving; the chance grows with k. */
    static double oneSided(int n, double coverage, double confidence) {
        double z = NORMAL.inverseCumulativeProbability(coverage);
        double low = 0;
        double high = 1;
        while (reached(high, n, z) < confidence) {
            high *= 2;
        }
        for (int i = 0; i < HALVINGS && Math.nextUp(low) < high; i++) {
            double middle = (low + high) / 2;
            if (reached(middle, n, z) < confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** P(x̄ + k s ≥ µ + z σ), over all quantiles p of s: x̄ is normal beside it, so that it is the mean of Φ(√n (k s − z)). */
    private static double reached(double k, int n, double z) {
        var chi = ChiSquaredDistribution.of(n - 1.0);
        double root = Math.sqrt(chi.inverseCumulativeProbability(0.5));
        double least = Math.max(0, root - 9);
        double step = 2 * 9.0 / POINTS;
        double sum = 0;
        for (int i = 0; i <= POINTS; i++) {
            double y = least + i * step;
            double weight = (i == 0 || i == POINTS ? 1 : i % 2 == 1 ? 4 : 2) * step / 3;
            double s = y / Math.sqrt(n - 1.0);
            sum += weight * 2 * y * chi.density(y * y) * NORMAL.cumulativeProbability(Math.sqrt(n) * (k * s - z));
        }
        return sum;
    }
}

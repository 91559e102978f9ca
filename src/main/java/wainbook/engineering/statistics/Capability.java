package wainbook.engineering.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * How well values keep to their limits. Cp = (U − L) / 6σ and Cpk = min(U − x̄, x̄ − L) / 3σ with the scatter from value to
 * value, σ = MR̄ / 1.128; Pp and Ppk the same with the standard deviation s of all. Interval of Pp by χ² with n − 1 degrees of
 * freedom; of Ppk by ± z √(1/(9n) + Ppk²/(2(n − 1))). Where values follow a lognormal law all is done with their logarithms' s
 * and percentiles: Ppk = min((U − X50) / (X99.865 − X50), (X50 − L) / (X50 − X0.135)), no Cp.
 */
public final class Capability implements Calculation<Capability.Inputs, Capability.Results> {

    private static final int ENOUGH = 50;

    /** The law that the values follow. */
    public enum Law {
        NORMAL,
        LOGNORMAL;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @param confidence of the intervals, both sides together */
    public record Inputs(
            @Size(from = 2) List<Double> values,
            Optional<Double> lower,
            Optional<Double> upper,
            @Preset("0.95") @Domain(above = 0, below = 1) double confidence,
            @Preset("\"normal\"") Law law)
            implements Checked {
        public Inputs {
            values = List.copyOf(values);
        }

        public Inputs(List<Double> values, Optional<Double> lower, Optional<Double> upper, double confidence) {
            this(values, lower, upper, confidence, Law.NORMAL);
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            if (lower.isPresent() && upper.isPresent() && lower.get() >= upper.get()) {
                faults.add(Fault.of("upper", "above", lower.get()));
            }
            if (law == Law.LOGNORMAL) {
                for (int i = 0; i < values.size(); i++) {
                    if (values.get(i) <= 0) {
                        faults.add(Fault.of("values[" + i + "]", "above", 0.0));
                    }
                }
            }
            return faults;
        }
    }

    /**
     * An index without its limit, or without the other one, is absent.
     *
     * @param s standard deviation of all values
     * @param sWithin scatter from each value to the next
     */
    public record Results(
            int n,
            double mean,
            double s,
            double sWithin,
            Optional<Double> cp,
            Optional<Double> cpk,
            Optional<Double> pp,
            Optional<Double> ppk,
            Optional<Double> ppLow,
            Optional<Double> ppHigh,
            Optional<Double> ppkLow,
            Optional<Double> ppkHigh) {}

    /** Where 0.135 %, 50 % and 99.865 % of the values lie. */
    private record Spread(double low, double middle, double high) {

        Optional<Double> both(Inputs in) {
            return in.lower().flatMap(from -> in.upper().map(to -> (to - from) / (high - low)));
        }

        Optional<Double> nearer(Inputs in) {
            return Stream.of(
                            in.upper().map(to -> (to - middle) / (high - middle)),
                            in.lower().map(from -> (middle - from) / (middle - low)))
                    .flatMap(Optional::stream)
                    .min(Double::compare);
        }
    }

    @Override
    public String name() {
        return "capability";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("NIST/SEMATECH e-Handbook", "6.1.6, about 50 independent values are enough"),
                Source.seen(
                        "R. N. Rodriguez, J. Quality Technology 24(4), 1992", "interval of Cpk, as an excerpt has it"),
                Source.seen("A statistics package’s page of methods", "interval of Cp by χ²"),
                Source.memory("ISO 22514-1 and ISO 22514-2", "names, percentiles where values are not normal"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.indexNeedsChart"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        var sample = new Sample(in.values());
        double s = sample.s();
        double within = sample.movingRangeMean() / Sample.D2_OF_TWO;
        if (s == 0 || within == 0) {
            return Answer.impossible("nothing-varies", sample.n());
        }
        double mean = sample.mean();
        Spread all = spread(in, mean, s);
        Spread near = new Spread(mean - 3 * within, mean, mean + 3 * within);
        boolean normal = in.law() == Law.NORMAL;
        Optional<Double> pp = all.both(in);
        Optional<Double> ppk = all.nearer(in);
        double freedom = sample.n() - 1.0;
        var chi = ChiSquaredDistribution.of(freedom);
        double tail = (1 - in.confidence()) / 2;
        double z = NormalDistribution.of(0, 1).inverseSurvivalProbability(tail);
        var results = new Results(
                sample.n(),
                mean,
                s,
                within,
                near.both(in).filter(index -> normal),
                near.nearer(in).filter(index -> normal),
                pp,
                ppk,
                pp.map(index -> index * Math.sqrt(chi.inverseCumulativeProbability(tail) / freedom)),
                pp.map(index -> index * Math.sqrt(chi.inverseSurvivalProbability(tail) / freedom)),
                ppk.map(index -> index - z * error(index, sample.n())),
                ppk.map(index -> index + z * error(index, sample.n())));
        return Answer.worked(new Working<>(
                results, Optional.empty(), because(results), steps(in, results), sources(), heeded(sample.n())));
    }

    private static Spread spread(Inputs in, double mean, double s) {
        if (in.law() == Law.NORMAL) {
            return new Spread(mean - 3 * s, mean, mean + 3 * s);
        }
        var logarithms = new Sample(in.values().stream().map(Math::log).toList());
        double middle = logarithms.mean();
        double wide = 3 * logarithms.s();
        return new Spread(Math.exp(middle - wide), Math.exp(middle), Math.exp(middle + wide));
    }

    private static double error(double index, int n) {
        return Math.sqrt(1.0 / (9.0 * n) + index * index / (2 * (n - 1.0)));
    }

    private static Sentence because(Results found) {
        return found.ppk()
                .map(ppk -> Sentence.brief(
                        "engineering.capability.none",
                        found.n(),
                        ppk,
                        found.ppkLow().orElseThrow(),
                        found.ppkHigh().orElseThrow()))
                .orElseGet(() -> Sentence.brief("engineering.capability.noLimit", found.n(), found.mean(), found.s()));
    }

    private static List<Step> steps(Inputs in, Results found) {
        Stream<Step> spread = Stream.of(
                Step.of("standardDeviation", "s = √(Σ(x − x̄)² / (n − 1))", found.s(), "", "n = %s", found.n()),
                Step.of("scatterWithin", "σ = MR̄ / 1.128", found.sWithin(), "", "n = %s", found.n()));
        Stream<Step> indices = Stream.of(
                        found.cpk()
                                .map(cpk -> Step.of(
                                        "cpk",
                                        "min(U − x̄, x̄ − L) / 3σ",
                                        cpk,
                                        "",
                                        "x̄ = %s, σ = %s",
                                        found.mean(),
                                        found.sWithin())),
                        found.ppk()
                                .map(ppk -> Step.of(
                                        "ppk",
                                        in.law() == Law.NORMAL
                                                ? "min(U − x̄, x̄ − L) / 3s"
                                                : "min((U − X50) / (X99.865 − X50), (X50 − L) / (X50 − X0.135))",
                                        ppk,
                                        "",
                                        "x̄ = %s, s = %s",
                                        found.mean(),
                                        found.s())))
                .flatMap(Optional::stream);
        return Stream.concat(spread, indices).toList();
    }

    private List<Sentence> heeded(int n) {
        Stream<Sentence> few =
                n < ENOUGH ? Stream.of(Sentence.of("engineering.caution.fewValues", n, ENOUGH)) : Stream.empty();
        return Stream.concat(few, cautions().stream()).toList();
    }
}

package wainbook.engineering.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Means of groups with their ranges or standard deviations: X̿ ± A2 R̄ and D3 R̄ … D4 R̄, or X̿ ± A3 S̄ and B3 S̄ … B4 S̄, the
 * factors to full precision. With limits given, Cp and Cpk by the scatter within the groups, σ = R̄ / d2 or S̄ / c4.
 */
public final class SubgroupChart implements Calculation<SubgroupChart.Inputs, SubgroupChart.Results> {

    /** How the scatter within a group is taken. */
    public enum Scatter {
        RANGE,
        DEVIATION;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }

        double of(List<Double> group) {
            return this == RANGE ? new Sample(group).range() : new Sample(group).s();
        }

        double perSigma(ChartConstants known) {
            return this == RANGE ? known.d2() : known.c4();
        }

        double meanFactor(ChartConstants known) {
            return this == RANGE ? known.a2() : known.a3();
        }

        double factor(ChartConstants known, int side) {
            return this == RANGE ? known.rangeFactor(side) : known.deviationFactor(side);
        }
    }

    public record Inputs(
            @Size(from = 2, to = 1000) List<@Size(from = 2, to = 25) List<Double>> groups,
            @Preset("\"range\"") Scatter scatter,
            Optional<Double> lowerLimit,
            Optional<Double> upperLimit)
            implements Checked {
        public Inputs {
            groups = groups.stream().map(List::copyOf).toList();
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            for (int i = 1; i < groups.size(); i++) {
                if (groups.get(i).size() != groups.get(0).size()) {
                    faults.add(Fault.of(
                            "groups[" + i + "]",
                            "asMany",
                            "groups[0]",
                            groups.get(0).size()));
                }
            }
            if (lowerLimit.isPresent() && upperLimit.isPresent() && lowerLimit.get() >= upperLimit.get()) {
                faults.add(Fault.of("upperLimit", "above", lowerLimit.get()));
            }
            return faults;
        }
    }

    /** @param beyond groups, counted from 0, whose mean or scatter lies beyond its control limits */
    public record Results(
            double centre,
            double upper,
            double lower,
            double scatterMean,
            double scatterUpper,
            double scatterLower,
            double sigma,
            List<Integer> beyond,
            Optional<Double> cp,
            Optional<Double> cpk) {
        public Results {
            beyond = List.copyOf(beyond);
        }
    }

    @Override
    public String name() {
        return "subgroup-chart";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("A statistics package’s derivation of chart constants", "A2, A3, B3, B4, D3, D4"),
                Source.memory("ISO 7870-2:2023", "Shewhart control charts, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.controlIsNotLimit"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Double> means =
                in.groups().stream().map(group -> new Sample(group).mean()).toList();
        List<Double> scatters = in.groups().stream().map(in.scatter()::of).toList();
        double centre = new Sample(means).mean();
        double scatter = new Sample(scatters).mean();
        if (scatter == 0) {
            return Answer.impossible("nothing-varies", in.groups().size());
        }
        ChartConstants known = ChartConstants.of(in.groups().get(0).size());
        double reach = in.scatter().meanFactor(known) * scatter;
        double most = in.scatter().factor(known, 1) * scatter;
        double least = in.scatter().factor(known, -1) * scatter;
        double sigma = scatter / in.scatter().perSigma(known);
        List<Integer> beyond = IntStream.range(0, means.size())
                .filter(i ->
                        outside(means.get(i), centre - reach, centre + reach) || outside(scatters.get(i), least, most))
                .boxed()
                .toList();
        Optional<Double> cp =
                in.lowerLimit().flatMap(lower -> in.upperLimit().map(upper -> (upper - lower) / (6 * sigma)));
        Optional<Double> cpk = Stream.of(
                        in.upperLimit().map(upper -> (upper - centre) / (3 * sigma)),
                        in.lowerLimit().map(lower -> (centre - lower) / (3 * sigma)))
                .flatMap(Optional::stream)
                .min(Double::compare);
        return found(
                new Results(centre, centre + reach, centre - reach, scatter, most, least, sigma, beyond, cp, cpk),
                Sentence.of("engineering.subgroup-chart.none", means.size(), beyond.size()),
                Step.of("centre", "X̿ = Σx̄ / k", centre, "", "k = %s", means.size()),
                Step.of("scatterMean", "R̄ or S̄", scatter, "", "k = %s", scatters.size()),
                Step.of(
                        "controlUpper",
                        "X̿ + A · scatter",
                        centre + reach,
                        "",
                        "%s + %s · %s",
                        centre,
                        in.scatter().meanFactor(known),
                        scatter),
                Step.of(
                        "scatterWithin",
                        "σ = R̄ / d2 or S̄ / c4",
                        sigma,
                        "",
                        "%s / %s",
                        scatter,
                        in.scatter().perSigma(known)));
    }

    /** On a limit is not beyond it. */
    static boolean outside(double value, double lower, double upper) {
        double compared = Plain.compared(value);
        return compared < Plain.compared(lower) || compared > Plain.compared(upper);
    }
}

package wainbook.engineering.measurement;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
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
 * Individual values in the order of time with the range from each to the next: the centre is their mean, the control limits
 * lie 2.66 mean moving ranges from it, the moving range's upper limit at 3.267 of them. Both factors are the textbooks',
 * 3 / 1.128 and D4 for two, rounded. Control limits say what the process does, never what is allowed.
 */
public final class IndividualsChart implements Calculation<IndividualsChart.Inputs, IndividualsChart.Results> {

    private static final double LIMITS = 2.66;
    private static final double MOVING_RANGE_LIMIT = 3.267;

    /**
     * @param rules which run rules are asked, by number
     * @param limitsFrom how many of the first values the limits come from, and are held from there on; absent for all
     */
    public record Inputs(
            @Size(from = 2) List<Double> values,
            @Preset("[1, 2, 3, 5]") @Size(to = 5) List<@Domain(oneOf = {1, 2, 3, 5, 7}) Integer> rules,
            Optional<@Domain(from = 2) Integer> limitsFrom)
            implements Checked {
        public Inputs {
            values = List.copyOf(values);
            rules = List.copyOf(rules);
        }

        public Inputs(List<Double> values, List<Integer> rules) {
            this(values, rules, Optional.empty());
        }

        List<Double> first() {
            return values.subList(0, limitsFrom.orElse(values.size()));
        }

        @Override
        public List<Fault> faults() {
            return limitsFrom.orElse(2) <= values.size()
                    ? List.of()
                    : List.of(Fault.of("limitsFrom", "to", (double) values.size()));
        }
    }

    /** A rule that was completed at a point; points are counted from 0. */
    public record Signal(int index, int rule) {}

    public record Results(
            double centre,
            double upper,
            double lower,
            double movingRangeMean,
            double movingRangeUpper,
            List<Signal> signals) {
        public Results {
            signals = List.copyOf(signals);
        }
    }

    @Override
    public String name() {
        return "individuals-chart";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("NIST/SEMATECH e-Handbook", "6.3.2.2, as public test data credit it"),
                Source.seen(
                        "L. S. Nelson, J. Quality Technology 16(4), 1984",
                        "run rules 1, 2, 3, 5 and 7, as the help of statistics software lists them"),
                Source.memory("ISO 7870-2:2023", "Shewhart control charts, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.controlIsNotLimit"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Double> values = in.first();
        double centre =
                values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double range = IntStream.range(1, values.size())
                .mapToDouble(point -> Math.abs(values.get(point) - values.get(point - 1)))
                .average()
                .orElseThrow();
        List<Signal> signals = signals(in, centre, LIMITS * range / 3);
        var results = new Results(
                centre, centre + LIMITS * range, centre - LIMITS * range, range, MOVING_RANGE_LIMIT * range, signals);
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                Sentence.of("engineering.individuals-chart.none", in.values().size(), signals.size()),
                List.of(
                        Step.of("centre", "x̄ = Σx / n", centre, "", "Σ / %s", values.size()),
                        Step.of(
                                "movingRangeMean",
                                "MR̄ = Σ|xᵢ − xᵢ₋₁| / (n − 1)",
                                range,
                                "",
                                "Σ / %s",
                                values.size() - 1),
                        Step.of(
                                "controlUpper",
                                "x̄ + 2.66 · MR̄",
                                results.upper(),
                                "",
                                "%s + 2.66 · %s",
                                centre,
                                range),
                        Step.of(
                                "controlLower",
                                "x̄ − 2.66 · MR̄",
                                results.lower(),
                                "",
                                "%s − 2.66 · %s",
                                centre,
                                range),
                        Step.of(
                                "movingRangeUpper",
                                "3.267 · MR̄",
                                results.movingRangeUpper(),
                                "",
                                "3.267 · %s",
                                range)),
                sources(),
                cautions()));
    }

    private static List<Signal> signals(Inputs in, double centre, double sigma) {
        List<Double> z = RunRule.distances(in.values(), centre, sigma);
        return IntStream.range(0, z.size())
                .boxed()
                .flatMap(point -> Arrays.stream(RunRule.values())
                        .filter(rule -> in.rules().contains(rule.number()))
                        .filter(rule -> rule.completedAt(z, point))
                        .map(rule -> new Signal(point, rule.number())))
                .toList();
    }
}

package wainbook.engineering.statistics;

import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Readings of different joints on one chart: each as its distance from the nominal in percent of half the tolerance, so that all
 * limits are ± 100; then x̄ ± 2.66 mean moving ranges, as on any chart of individual values.
 */
public final class ShortRun implements Calculation<ShortRun.Inputs, ShortRun.Results> {

    private static final double LIMITS = 2.66;
    private static final double MOVING_RANGE_LIMIT = 3.267;

    public record Inputs(
            @Size(from = 2) List<Double> readings,
            @Size(from = 2) List<Double> nominals,
            @Size(from = 2) List<@Domain(above = 0) Double> halfTolerances)
            implements Checked {
        public Inputs {
            readings = List.copyOf(readings);
            nominals = List.copyOf(nominals);
            halfTolerances = List.copyOf(halfTolerances);
        }

        @Override
        public List<Fault> faults() {
            int n = readings.size();
            return List.of(
                            Fault.of("nominals", "asMany", "readings", n),
                            Fault.of("halfTolerances", "asMany", "readings", n))
                    .stream()
                    .filter(fault -> n != (fault.field().equals("nominals") ? nominals : halfTolerances).size())
                    .toList();
        }
    }

    /** All in percent of half the tolerance. */
    public record Results(
            List<Double> standardised,
            double centre,
            double upper,
            double lower,
            double movingRangeMean,
            double movingRangeUpper,
            List<Integer> beyond) {
        public Results {
            standardised = List.copyOf(standardised);
            beyond = List.copyOf(beyond);
        }
    }

    @Override
    public String name() {
        return "short-run";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen("ISO 7870-8:2017", "short runs and small mixed batches, its abstract only"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.controlIsNotLimit"), Sentence.of("engineering.caution.likeWithLike"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Double> z = IntStream.range(0, in.readings().size())
                .mapToObj(i -> 100
                        * (in.readings().get(i) - in.nominals().get(i))
                        / in.halfTolerances().get(i))
                .toList();
        var sample = new Sample(z);
        double centre = sample.mean();
        double range = sample.movingRangeMean();
        double upper = centre + LIMITS * range;
        double lower = centre - LIMITS * range;
        List<Integer> beyond = IntStream.range(0, z.size())
                .filter(i -> SubgroupChart.outside(z.get(i), lower, upper))
                .boxed()
                .toList();
        return found(
                new Results(z, centre, upper, lower, range, MOVING_RANGE_LIMIT * range, beyond),
                Sentence.of("engineering.short-run.none", z.size(), beyond.size()),
                Step.of("centre", "x̄ = Σz / n", centre, "%", "n = %s", z.size()),
                Step.of("movingRangeMean", "MR̄ = Σ|zᵢ − zᵢ₋₁| / (n − 1)", range, "%", "n = %s", z.size()),
                Step.of("controlUpper", "x̄ + 2.66 · MR̄", upper, "%", "%s + 2.66 · %s", centre, range),
                Step.of("controlLower", "x̄ − 2.66 · MR̄", lower, "%", "%s − 2.66 · %s", centre, range));
    }
}

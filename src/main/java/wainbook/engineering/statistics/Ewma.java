package wainbook.engineering.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Exponentially weighted moving average: z = λ x + (1 − λ) z, from the target; control limits target ± k s √(λ / (2 − λ)), those
 * of the steady state.
 */
public final class Ewma implements Calculation<Ewma.Inputs, Ewma.Results> {

    /**
     * @param usualS standard deviation of single values
     * @param weight λ of the newest
     * @param width k
     */
    public record Inputs(
            @Size(from = 1) List<Double> values,
            double target,
            @Domain(above = 0) double usualS,
            @Preset("0.3") @Domain(above = 0, to = 1) double weight,
            @Preset("3") @Domain(above = 0) double width) {
        public Inputs {
            values = List.copyOf(values);
        }
    }

    public record Results(double upper, double lower, List<Double> averages, List<Integer> signalsAt) {
        public Results {
            averages = List.copyOf(averages);
            signalsAt = List.copyOf(signalsAt);
        }
    }

    @Override
    public String name() {
        return "ewma";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("NIST/SEMATECH e-Handbook", "6.3.2.4, as public test data credit it"),
                Source.memory("ISO 7870-6", "EWMA charts, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.controlIsNotLimit"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double reach = in.width() * in.usualS() * Math.sqrt(in.weight() / (2 - in.weight()));
        double upper = in.target() + reach;
        double lower = in.target() - reach;
        List<Double> averages = new ArrayList<>();
        double average = in.target();
        for (double value : in.values()) {
            average = in.weight() * value + (1 - in.weight()) * average;
            averages.add(average);
        }
        List<Integer> signals = IntStream.range(0, averages.size())
                .filter(i -> SubgroupChart.outside(averages.get(i), lower, upper))
                .boxed()
                .toList();
        return found(
                new Results(upper, lower, averages, signals),
                Sentence.of("engineering.ewma.none", averages.size(), signals.size()),
                Step.of(
                        "controlUpper",
                        "target + k · s · √(λ / (2 − λ))",
                        upper,
                        "",
                        "%s + %s · %s · √(%s / (2 − %s))",
                        in.target(),
                        in.width(),
                        in.usualS(),
                        in.weight(),
                        in.weight()),
                Step.of("lastAverage", "z = λ · x + (1 − λ) · z, last", average, "", "λ = %s", in.weight()));
    }
}

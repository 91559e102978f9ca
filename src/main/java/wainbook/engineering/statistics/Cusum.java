package wainbook.engineering.statistics;

import java.util.ArrayList;
import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Cumulative sums to both sides of a target, which see a small lasting shift: S⁺ = max(0, S⁺ + x − target − k), S⁻ = max(0, S⁻ +
 * target − k − x). A sum above h is a signal.
 */
public final class Cusum implements Calculation<Cusum.Inputs, Cusum.Results> {

    /**
     * @param slack k, half the shift that shall be found
     * @param decision h
     */
    public record Inputs(
            @Size(from = 1) List<Double> values,
            double target,
            @Domain(from = 0) double slack,
            @Domain(above = 0) double decision) {
        public Inputs {
            values = List.copyOf(values);
        }
    }

    /** Both sums after a value. */
    public record Sums(double up, double down, boolean signal) {}

    /** @param signalsAt places, from 0, at which a sum is above h */
    public record Results(List<Sums> sums, List<Integer> signalsAt) {
        public Results {
            sums = List.copyOf(sums);
            signalsAt = List.copyOf(signalsAt);
        }
    }

    @Override
    public String name() {
        return "cusum";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("NIST/SEMATECH e-Handbook", "6.3.2.3"),
                Source.memory("ISO 7870-4", "cumulative sum charts, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.controlIsNotLimit"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        List<Sums> sums = new ArrayList<>();
        List<Integer> signals = new ArrayList<>();
        double up = 0;
        double down = 0;
        for (double value : in.values()) {
            up = Math.max(0, up + value - in.target() - in.slack());
            down = Math.max(0, down + in.target() - in.slack() - value);
            boolean signal = Plain.compared(Math.max(up, down)) > Plain.compared(in.decision());
            if (signal) {
                signals.add(sums.size());
            }
            sums.add(new Sums(up, down, signal));
        }
        return found(
                new Results(sums, signals),
                Sentence.of("engineering.cusum.none", sums.size(), signals.size()),
                Step.of("sumUp", "S⁺ = max(0, S⁺ + x − target − k), last", up, "", "k = %s", in.slack()),
                Step.of("sumDown", "S⁻ = max(0, S⁻ + target − k − x), last", down, "", "k = %s", in.slack()));
    }
}

package wainbook.engineering.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * What of the spread of measurements is the gauge and what the parts, by analysis of variance of parts × people × trials. The
 * interaction of parts and people is pooled with the repeatability where its p exceeds 0.05. Negative estimates of a variance
 * count as none.
 */
public final class GaugeStudy implements Calculation<GaugeStudy.Inputs, GaugeStudy.Results> {

    private static final double POOLED_ABOVE = 0.05;
    private static final double CATEGORIES = 1.41;

    /** @param measurements by part, then person, then trial; as many of each everywhere */
    public record Inputs(@Size(from = 2) List<@Size(from = 2) List<@Size(from = 2) List<Double>>> measurements)
            implements Checked {
        public Inputs {
            measurements = measurements.stream()
                    .map(part -> part.stream().map(List::copyOf).toList())
                    .toList();
        }

        int parts() {
            return measurements.size();
        }

        int people() {
            return measurements.get(0).size();
        }

        int trials() {
            return measurements.get(0).get(0).size();
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            for (int part = 0; part < parts(); part++) {
                List<List<Double>> people = measurements.get(part);
                if (people.size() != people()) {
                    faults.add(Fault.of("measurements[" + part + "]", "asMany", "measurements[0]", people()));
                }
                for (int person = 0; person < people.size(); person++) {
                    if (people.get(person).size() != trials()) {
                        faults.add(Fault.of(
                                "measurements[" + part + "][" + person + "]",
                                "asMany",
                                "measurements[0][0]",
                                trials()));
                    }
                }
            }
            return faults;
        }
    }

    /**
     * Standard deviations, in the unit of the measurements.
     *
     * @param percentGauge gauge of total
     * @param categories how many kinds of part the gauge tells apart, not rounded
     * @param pInteraction chance of so strong an interaction where there is none
     */
    public record Results(
            double repeatability,
            double reproducibility,
            double gauge,
            double part,
            double total,
            double percentGauge,
            double categories,
            double pInteraction,
            boolean pooled) {}

    @Override
    public String name() {
        return "gauge-study";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen(
                        "AIAG Measurement Systems Analysis, 4th edition",
                        "analysis of variance, as public test data credit it"),
                Source.memory(
                        "AIAG Measurement Systems Analysis, 4th edition",
                        "below 10 % good, to 30 % perhaps, five categories"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.partsSpent"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Variances found = Variances.of(in.measurements());
        if (found.error() == 0 && found.interaction() == 0) {
            return Answer.impossible("no-gauge-spread");
        }
        double p = found.pInteraction();
        boolean pooled = p > POOLED_ABOVE;
        double repeat = pooled ? found.pooled() : found.error();
        double cross = pooled ? 0 : Math.max(0, (found.interaction() - found.error()) / in.trials());
        double beside = pooled ? repeat : found.interaction();
        double people = Math.max(0, (found.person() - beside) / (in.parts() * in.trials()));
        double parts = Math.max(0, (found.part() - beside) / (in.people() * in.trials()));
        double gauge = Math.sqrt(repeat + people + cross);
        double total = Math.sqrt(repeat + people + cross + parts);
        var results = new Results(
                Math.sqrt(repeat),
                Math.sqrt(people + cross),
                gauge,
                Math.sqrt(parts),
                total,
                100 * gauge / total,
                CATEGORIES * Math.sqrt(parts) / gauge,
                p,
                pooled);
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                Sentence.brief("engineering.gauge-study.none", results.percentGauge(), results.categories()),
                steps(in, found, results),
                sources(),
                cautions()));
    }

    private static List<Step> steps(Inputs in, Variances found, Results results) {
        return List.of(
                Step.of("meanSquarePart", "MS_part = SS / (parts − 1)", found.part(), "", "%s parts", in.parts()),
                Step.of(
                        "meanSquarePerson",
                        "MS_person = SS / (people − 1)",
                        found.person(),
                        "",
                        "%s people",
                        in.people()),
                Step.of(
                        "meanSquareInteraction",
                        "MS_inter = SS / ((parts − 1) · (people − 1))",
                        found.interaction(),
                        "",
                        "p = %s",
                        results.pInteraction()),
                Step.of(
                        "meanSquareError",
                        "MS_error = SS / (parts · people · (trials − 1))",
                        found.error(),
                        "",
                        "%s trials",
                        in.trials()),
                Step.of(
                        "gaugeSpread",
                        "gauge = √(repeatability² + reproducibility²)",
                        results.gauge(),
                        "",
                        "√(%s² + %s²)",
                        results.repeatability(),
                        results.reproducibility()),
                Step.of(
                        "categories",
                        "1.41 · part / gauge",
                        results.categories(),
                        "",
                        "1.41 · %s / %s",
                        results.part(),
                        results.gauge()));
    }
}

package wainbook.engineering.measurement;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.statistics.ChartConstants;

/**
 * The study of a gauge by averages and ranges, as it is done on paper: EV = R̄ / d2(trials), AV = √((X̄diff / d2*(people))² −
 * EV²/(parts · trials)), PV = Rp / d2*(parts), with d2* = √(d2² + d3²), which printed K factors round.
 */
public final class GaugeStudyByRanges implements Calculation<GaugeStudyByRanges.Inputs, GaugeStudy.Results> {

    private static final double CATEGORIES = 1.41;
    private static final int MOST = 25;

    /** @param measurements by part, then person, then trial; as many of each everywhere */
    public record Inputs(
            @Size(from = 2, to = MOST)
            List<@Size(from = 2, to = MOST) List<@Size(from = 2, to = MOST) List<Double>>> measurements)
            implements Checked {
        public Inputs {
            measurements = new GaugeStudy.Inputs(measurements).measurements();
        }

        @Override
        public List<Fault> faults() {
            return new GaugeStudy.Inputs(measurements).faults();
        }
    }

    @Override
    public String name() {
        return "gauge-study-by-ranges";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.seen(
                "AIAG Measurement Systems Analysis, 4th edition",
                "average and range, from a worksheet with its K factors"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.partsSpent"));
    }

    @Override
    public Answer<GaugeStudy.Results> work(Inputs in) {
        List<List<List<Double>>> table = in.measurements();
        int people = table.get(0).size();
        int trials = table.get(0).get(0).size();
        double meanRange = table.stream()
                .flatMap(List::stream)
                .mapToDouble(cell -> range(cell.stream()))
                .average()
                .orElseThrow();
        if (meanRange == 0) {
            return Answer.impossible("no-gauge-spread");
        }
        double peopleRange = range(IntStream.range(0, people)
                .mapToObj(person -> mean(table.stream().map(part -> part.get(person)))));
        double partRange = range(table.stream().map(part -> mean(part.stream())));
        double repeat = meanRange / ChartConstants.of(trials).d2();
        double between = peopleRange / ChartConstants.of(people).d2OfOne();
        double reproduce =
                Math.sqrt(Math.max(0, between * between - repeat * repeat / (table.size() * (double) trials)));
        double part = partRange / ChartConstants.of(table.size()).d2OfOne();
        double gauge = Math.hypot(repeat, reproduce);
        double total = Math.hypot(gauge, part);
        var results = new GaugeStudy.Results(
                repeat, reproduce, gauge, part, total, 100 * gauge / total, CATEGORIES * part / gauge, 1, true);
        return found(
                results,
                Sentence.brief("engineering.gauge-study.none", results.percentGauge(), results.categories()),
                Step.of("repeatabilityByRange", "EV = R̄ / d2", repeat, "", "R̄ = %s", meanRange),
                Step.of(
                        "reproducibilityByRange",
                        "AV = √((X̄diff / d2*)² − EV² / (parts · trials))",
                        reproduce,
                        "",
                        "X̄diff = %s",
                        peopleRange),
                Step.of("partsByRange", "PV = Rp / d2*", part, "", "Rp = %s", partRange));
    }

    private static double mean(Stream<List<Double>> cells) {
        return cells.flatMap(Collection::stream)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
    }

    private static double range(Stream<Double> values) {
        var all = values.mapToDouble(Double::doubleValue).summaryStatistics();
        return all.getMax() - all.getMin();
    }
}

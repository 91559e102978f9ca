package wainbook.engineering.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

/**
 * Counts on a control chart: the share of faulty pieces, p̄ ± 3 √(p̄ (1 − p̄) / n); faults a piece, ū ± 3 √(ū / n); or faults in
 * samples of one size, c̄ ± 3 √c̄. Limits below nought are nought. Samples may differ in size for p and u.
 */
public final class AttributeChart implements Calculation<AttributeChart.Inputs, AttributeChart.Results> {

    private static final int MOST = 1_000_000;

    /** What is counted: faulty pieces, faults a piece, faults. */
    public enum Kind {
        P,
        U,
        C;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @param sizes of the samples; none for c */
    public record Inputs(
            Kind kind,
            @Size(from = 2) List<@Domain(from = 0, to = MOST) Integer> counts,
            @Preset("[]") List<@Domain(from = 1, to = MOST) Integer> sizes)
            implements Checked {
        public Inputs {
            counts = List.copyOf(counts);
            sizes = List.copyOf(sizes);
        }

        double size(int i) {
            return kind == Kind.C ? 1 : sizes.get(i);
        }

        @Override
        public List<Fault> faults() {
            int wanted = kind == Kind.C ? 0 : counts.size();
            if (sizes.size() != wanted) {
                return List.of(Fault.of("sizes", "size", wanted, wanted));
            }
            var faults = new ArrayList<Fault>();
            for (int i = 0; i < counts.size(); i++) {
                if (kind == Kind.P && counts.get(i) > sizes.get(i)) {
                    faults.add(Fault.of("counts[" + i + "]", "to", (double) sizes.get(i)));
                }
            }
            return faults;
        }
    }

    public record Point(double value, double lower, double upper, boolean beyond) {}

    public record Results(double centre, List<Point> points, List<Integer> beyond) {
        public Results {
            points = List.copyOf(points);
            beyond = List.copyOf(beyond);
        }
    }

    @Override
    public String name() {
        return "attribute-chart";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("NIST/SEMATECH e-Handbook", "6.3.3.1 and 6.3.3.2, as public test data credit it"),
                Source.memory("ISO 7870-2:2023", "Shewhart control charts, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.controlIsNotLimit"),
                Sentence.of("engineering.caution.rareIsNotNormal"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        int samples = in.counts().size();
        double all = in.counts().stream().mapToDouble(Integer::doubleValue).sum();
        double centre = all / IntStream.range(0, samples).mapToDouble(in::size).sum();
        double spread = in.kind() == Kind.P ? centre * (1 - centre) : centre;
        List<Point> points = IntStream.range(0, samples)
                .mapToObj(i -> point(in.counts().get(i) / in.size(i), centre, 3 * Math.sqrt(spread / in.size(i))))
                .toList();
        List<Integer> beyond = IntStream.range(0, samples)
                .filter(i -> points.get(i).beyond())
                .boxed()
                .toList();
        return found(
                new Results(centre, points, beyond),
                Sentence.of("engineering.attribute-chart.none", samples, beyond.size()),
                Step.of("centre", "Σ counts / Σ sizes", centre, "", "%s counted", all),
                Step.of(
                        "controlUpper",
                        "centre + 3 · √(spread / n), first sample",
                        points.get(0).upper(),
                        "",
                        "%s + 3 · √(%s / %s)",
                        centre,
                        spread,
                        in.size(0)));
    }

    private static Point point(double value, double centre, double reach) {
        double lower = Math.max(0, centre - reach);
        double upper = centre + reach;
        return new Point(value, lower, upper, SubgroupChart.outside(value, lower, upper));
    }
}

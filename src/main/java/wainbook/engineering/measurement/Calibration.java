package wainbook.engineering.measurement;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Limit;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Verdict;
import wainbook.engineering.Working;

/**
 * A calibration of a torque tool, point by point: w² = (W_ref/2)² + 2 · w_r² + Σ(b/(2√3))² + w_rep², with w_r half a step
 * over √3 and w_rep = s/√n, both as shares; W = 2 · w; W′ = |mean a| + W. The tool passes if W′ keeps to what is permitted at
 * every point.
 */
public final class Calibration implements Calculation<Calibration.Inputs, Calibration.Results> {

    /**
     * @param targetNm set or shown
     * @param referenceNm what the reference read each time
     */
    public record Pulls(
            @Domain(above = 0) double targetNm,
            @Size(from = 2, to = 100) List<@Domain(above = 0) Double> referenceNm) {
        public Pulls {
            referenceNm = List.copyOf(referenceNm);
        }

        double mean() {
            return referenceNm.stream()
                    .mapToDouble(Double::doubleValue)
                    .average()
                    .orElseThrow();
        }

        /** Of the mean, in percent of it. */
        double repeatabilityPercent() {
            double mean = mean();
            double squares = referenceNm.stream()
                    .mapToDouble(read -> (read - mean) * (read - mean))
                    .sum();
            double deviation = Math.sqrt(squares / (referenceNm.size() - 1));
            return 100 * deviation / Math.sqrt(referenceNm.size()) / mean;
        }

        double meanDeviationPercent() {
            return referenceNm.stream()
                    .mapToDouble(read -> 100 * (targetNm - read) / read)
                    .average()
                    .orElseThrow();
        }
    }

    /**
     * @param referenceW expanded uncertainty of the reference (k = 2), in percent
     * @param stepNm resolution of the tool
     * @param spreadPercent of reproducibility, drive, interface, point of loading
     */
    public record Inputs(
            @Size(from = 1, to = 100) List<Pulls> points,
            @Domain(above = 0) double permittedPercent,
            @Domain(from = 0) double referenceW,
            @Domain(from = 0) double stepNm,
            @Preset("[]") @Size(to = 100) List<@Domain(from = 0) Double> spreadPercent) {
        public Inputs {
            points = List.copyOf(points);
            spreadPercent = List.copyOf(spreadPercent);
        }
    }

    /** One point, all in percent. */
    public record Point(double targetNm, double meanDeviationPercent, double w, double W, double Wprime) {

        Decision against(double permittedPercent) {
            return Limit.atMost(permittedPercent).judge(Math.abs(meanDeviationPercent), W, "%");
        }
    }

    public record Results(List<Point> points) {
        public Results {
            points = List.copyOf(points);
        }

        Point worst(double permittedPercent) {
            return points.stream()
                    .max(Comparator.comparingInt((Point one) ->
                                    weight(one.against(permittedPercent).verdict()))
                            .thenComparingDouble(Point::Wprime))
                    .orElseThrow();
        }

        private static int weight(Verdict verdict) {
            return switch (verdict) {
                case FAIL -> 2;
                case UNDECIDED -> 1;
                case PASS, NONE -> 0;
            };
        }
    }

    @Override
    public String name() {
        return "calibration";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("ISO 6789-2:2017", "uncertainty of a calibration, factors not seen"),
                Source.seen("ILAC-G8:09/2019", "4.2.2, guard band"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.asFoundFirst"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        var results =
                new Results(in.points().stream().map(pulls -> point(pulls, in)).toList());
        Point worst = results.worst(in.permittedPercent());
        Decision decision = worst.against(in.permittedPercent());
        return Answer.worked(new Working<>(
                results,
                Optional.of(decision),
                decision.because(
                        name(), worst.targetNm(), worst.meanDeviationPercent(), worst.W(), in.permittedPercent()),
                results.points().stream().flatMap(Calibration::steps).toList(),
                sources(),
                cautions()));
    }

    private static Point point(Pulls pulls, Inputs in) {
        double resolution = 100 * in.stepNm() / 2 / Math.sqrt(3) / pulls.targetNm();
        double repeatability = pulls.repeatabilityPercent();
        double spreads = in.spreadPercent().stream()
                .mapToDouble(spread -> spread * spread / 12)
                .sum();
        double w = Math.sqrt(in.referenceW() * in.referenceW() / 4
                + 2 * resolution * resolution
                + spreads
                + repeatability * repeatability);
        double deviation = pulls.meanDeviationPercent();
        return new Point(pulls.targetNm(), deviation, w, 2 * w, Math.abs(deviation) + 2 * w);
    }

    private static Stream<Step> steps(Point point) {
        return Stream.of(
                Step.of(
                        "relativeUncertainty",
                        "W = 2 · √((W_ref/2)² + 2 · w_r² + Σ(b/(2√3))² + w_rep²)",
                        point.W(),
                        "%",
                        "%s N·m: 2 · %s",
                        point.targetNm(),
                        point.w()),
                Step.of(
                        "uncertaintyInterval",
                        "W′ = |ā| + W",
                        point.Wprime(),
                        "%",
                        "%s N·m: |%s| + %s",
                        point.targetNm(),
                        point.meanDeviationPercent(),
                        point.W()));
    }
}

package wainbook.engineering.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * What an instrument that failed its calibration puts in doubt: each reading since it was last known good is worked back to
 * what the joint may have got. It had the error of the last good calibration at best and that of the failed one at worst,
 * or passed from one to the other evenly in time, which only tells whom to check first. true = shown / (1 + error); the two
 * ends, with no error at all where that lies between them, widened by the uncertainty, are the range that decides.
 */
public final class Containment implements Calculation<Containment.Inputs, Containment.Results> {

    /** @param day days since the instrument was last known good */
    public record Reading(
            String id,
            @Domain(from = 0) double day,
            @Domain(above = 0) double nm,
            @Domain(above = 0) double lowerNm,
            @Domain(above = 0) double upperNm) {}

    /**
     * @param foundAt errors as found, now
     * @param goodAt errors when it was last known good
     * @param uncertaintyPercent of a reading worked back
     */
    public record Inputs(
            @Size(from = 1, to = 100) List<ErrorPoint> foundAt,
            @Size(from = 1, to = 100) List<ErrorPoint> goodAt,
            @Domain(above = 0) double windowDays,
            @Domain(from = 0, below = 100) double uncertaintyPercent,
            List<Reading> readings)
            implements Checked {
        public Inputs {
            foundAt = List.copyOf(foundAt);
            goodAt = List.copyOf(goodAt);
            readings = List.copyOf(readings);
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            if (!ErrorCurve.rising(foundAt)) {
                faults.add(Fault.of("foundAt", "notRising"));
            }
            if (!ErrorCurve.rising(goodAt)) {
                faults.add(Fault.of("goodAt", "notRising"));
            }
            for (int i = 0; i < readings.size(); i++) {
                if (readings.get(i).day() > windowDays) {
                    faults.add(Fault.of("readings[" + i + "].day", "to", windowDays));
                }
                if (readings.get(i).lowerNm() > readings.get(i).upperNm()) {
                    faults.add(Fault.of(
                            "readings[" + i + "].upperNm",
                            "notBelow",
                            "lowerNm",
                            readings.get(i).lowerNm()));
                }
            }
            return faults;
        }
    }

    /** Whether the joint can be within its limits. */
    public enum Doubt {
        SURE_OUT("sure-out"),
        POSSIBLE("possible"),
        SAFE("safe");

        private final String word;

        Doubt(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /**
     * A reading worked back, in newton metres.
     *
     * @param best with the error of the last good calibration
     * @param linear with the error growing evenly in time
     * @param worst with the error as found
     */
    public record Judged(String id, double best, double linear, double worst, double low, double high, Doubt verdict) {}

    public record Results(List<Judged> readings) {
        public Results {
            readings = List.copyOf(readings);
        }

        long count(Doubt doubt) {
            return readings.stream().filter(one -> one.verdict() == doubt).count();
        }
    }

    @Override
    public String name() {
        return "containment";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("ISO 9001:2015", "7.1.5.2, the duty to look at earlier results"),
                Source.practice("the error at best, at worst and evenly in time"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.blowIsNotEven"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        var good = new ErrorCurve(in.goodAt());
        var found = new ErrorCurve(in.foundAt());
        var results = new Results(in.readings().stream()
                .map(reading -> judged(reading, good.at(reading.nm()), found.at(reading.nm()), in))
                .toList());
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                Sentence.of(
                        "engineering.containment.none",
                        in.readings().size(),
                        results.count(Doubt.SURE_OUT),
                        results.count(Doubt.POSSIBLE),
                        results.count(Doubt.SAFE)),
                Arrays.stream(Doubt.values())
                        .map(doubt -> Step.of(
                                "doubt." + doubt.name(),
                                "[low, high] against [L, U]",
                                (double) results.count(doubt),
                                "",
                                "Σ"))
                        .toList(),
                sources(),
                cautions()));
    }

    private static Judged judged(Reading reading, double good, double found, Inputs in) {
        double best = reading.nm() / (1 + good);
        double worst = reading.nm() / (1 + found);
        double even = good + (found - good) * reading.day() / in.windowDays();
        double[] ends = good * found < 0 ? new double[] {best, worst, reading.nm()} : new double[] {best, worst};
        double low = DoubleStream.of(ends).min().orElseThrow() * (1 - in.uncertaintyPercent() / 100);
        double high = DoubleStream.of(ends).max().orElseThrow() * (1 + in.uncertaintyPercent() / 100);
        return new Judged(reading.id(), best, reading.nm() / (1 + even), worst, low, high, doubt(reading, low, high));
    }

    private static Doubt doubt(Reading reading, double low, double high) {
        double lowest = Plain.compared(low);
        double highest = Plain.compared(high);
        if (highest < reading.lowerNm() || lowest > reading.upperNm()) {
            return Doubt.SURE_OUT;
        }
        return lowest >= reading.lowerNm() && highest <= reading.upperNm() ? Doubt.SAFE : Doubt.POSSIBLE;
    }
}

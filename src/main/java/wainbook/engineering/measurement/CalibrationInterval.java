package wainbook.engineering.measurement;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * Calibration interval for a reliability wanted, from the share found good at the interval kept so far, if instruments leave
 * their tolerance evenly in time: t_new = t · ln(wanted) / ln(seen).
 */
public final class CalibrationInterval implements Calculation<CalibrationInterval.Inputs, CalibrationInterval.Results> {

    public record Inputs(
            @Domain(above = 0) double intervalMonths,
            @Domain(above = 0, below = 1) double foundGoodShare,
            @Domain(above = 0, below = 1) double wantedGoodShare) {}

    public record Results(double newIntervalMonths) {}

    @Override
    public String name() {
        return "calibration-interval";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("NCSL RP-1", "interval by reliability, clause not seen"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.driftNeverLengthens"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double months = in.intervalMonths() * Math.log(in.wantedGoodShare()) / Math.log(in.foundGoodShare());
        return found(
                new Results(months),
                Sentence.brief("engineering.calibration-interval.none", months, in.wantedGoodShare()),
                Step.of(
                        "newInterval",
                        "t_new = t · ln(wanted) / ln(seen)",
                        months,
                        "months",
                        "%s · ln(%s) / ln(%s)",
                        in.intervalMonths(),
                        in.wantedGoodShare(),
                        in.foundGoodShare()));
    }
}

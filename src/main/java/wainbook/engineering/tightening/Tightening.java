package wainbook.engineering.tightening;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Verdict;
import wainbook.engineering.Working;

/**
 * Whether a tightening lies within its joint's limits, the instrument's uncertainty counted: a reading in
 * [L (1 + r W′), U (1 − r W′)] passes, one outside [L, U] fails, one between is not shown to conform. W′ is the relative
 * uncertainty interval of the instrument's certificate (k = 2, mean error included); r = 1 leaves less than 2.5 % chance of
 * wrongly accepting.
 */
public final class Tightening implements Calculation<Tightening.Inputs, Tightening.Results> {

    /** @param decisionFactor r: 1 keeps the whole uncertainty as guard band, 0 none */
    public record Inputs(
            @Domain(from = 0) double readingNm,
            @Domain(from = 0) double lowerNm,
            @Domain(above = 0) double upperNm,
            @Preset("0") @Domain(from = 0) double intervalPercent,
            @Preset("1") @Domain(from = 0) double decisionFactor)
            implements Checked {

        @Override
        public List<Fault> faults() {
            return lowerNm <= upperNm ? List.of() : List.of(Fault.of("upperNm", "notBelow", "lowerNm", lowerNm));
        }

        double guard() {
            return decisionFactor * intervalPercent / 100;
        }
    }

    public record Results(double acceptLowerNm, double acceptUpperNm) {

        Verdict verdict(Inputs in) {
            if (!within(in.readingNm(), in.lowerNm(), in.upperNm())) {
                return Verdict.FAIL;
            }
            return within(in.readingNm(), acceptLowerNm, acceptUpperNm) ? Verdict.PASS : Verdict.UNDECIDED;
        }

        private static boolean within(double readingNm, double fromNm, double toNm) {
            double compared = Plain.compared(readingNm);
            return Plain.compared(fromNm) <= compared && compared <= Plain.compared(toNm);
        }
    }

    @Override
    public String name() {
        return "tightening";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("ILAC-G8:09/2019", "4.2.2, guard band"),
                Source.memory("ISO 6789-2:2017", "relative measurement uncertainty interval W′, clause not seen"),
                Source.practice("a reading outside the limits always fails"));
    }

    @Override
    public List<Sentence> cautions() {
        return Cautions.TORQUE;
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Results results = new Results(in.lowerNm() * (1 + in.guard()), in.upperNm() * (1 - in.guard()));
        Decision decision = new Decision(
                results.verdict(in),
                Sentence.of("engineering.rule.tightening"),
                in.readingNm(),
                in.guard() * in.readingNm(),
                "Nm",
                Optional.of(in.lowerNm()),
                Optional.of(in.upperNm()));
        return Answer.worked(new Working<>(
                results,
                Optional.of(decision),
                decision.because(
                        name(),
                        in.readingNm(),
                        in.lowerNm(),
                        in.upperNm(),
                        results.acceptLowerNm(),
                        results.acceptUpperNm()),
                List.of(
                        Step.of(
                                "acceptLower",
                                "L · (1 + r · W′)",
                                results.acceptLowerNm(),
                                "Nm",
                                "%s · (1 + %s · %s %%)",
                                in.lowerNm(),
                                in.decisionFactor(),
                                in.intervalPercent()),
                        Step.of(
                                "acceptUpper",
                                "U · (1 − r · W′)",
                                results.acceptUpperNm(),
                                "Nm",
                                "%s · (1 − %s · %s %%)",
                                in.upperNm(),
                                in.decisionFactor(),
                                in.intervalPercent())),
                sources(),
                cautions()));
    }
}

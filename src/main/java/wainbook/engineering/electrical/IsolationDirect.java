package wainbook.engineering.electrical;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.ExactlyOne;
import wainbook.engineering.Limit;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Verdict;
import wainbook.engineering.Working;

/**
 * Insulation resistance read directly from an insulation tester, rails joined. A reading at the instrument's ceiling is kept
 * as "at least": it can pass, but it can prove no fail.
 */
public final class IsolationDirect implements Calculation<IsolationDirect.Inputs, IsolationDirect.Results> {

    /**
     * @param atLeastOhm the instrument's ceiling, when it shows no more than that
     * @param testV the voltage the instrument applied
     * @param workingV the greatest voltage the specification gives
     * @param limitOhmPerVolt a legal limit, or the works' own
     * @param accuracyPercent expanded uncertainty, k = 2, in percent of the reading
     */
    @ExactlyOne({"measuredOhm", "atLeastOhm"})
    public record Inputs(
            Optional<@Domain(from = 0) Double> measuredOhm,
            Optional<@Domain(above = 0) Double> atLeastOhm,
            @Domain(above = 0) double testV,
            @Domain(above = 0) double workingV,
            @Domain(above = 0) double limitOhmPerVolt,
            @Preset("0") @Domain(from = 0) double accuracyPercent) {}

    public record Results(
            double isolationOhm,
            double ohmPerVolt,
            double limitOhm,
            double expandedUncertaintyOhm,
            boolean openEnded) {}

    @Override
    public String name() {
        return "isolation-direct";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.ISOLATION_LIMITS,
                Source.seen("ISO 6469-3, as AS ISO 6469.3:2014", "8.2.2, test voltage not below the working voltage"),
                Origins.WORKING_VOLTAGE,
                Origins.GUARD_BAND,
                Source.practice("a reading at the instrument’s ceiling counts as the ceiling"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.PACK_STAYS_LIVE, Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (in.testV() < in.workingV()) {
            return Answer.impossible("test-voltage-too-low", in.testV(), in.workingV());
        }
        double isolationOhm = in.measuredOhm().or(in::atLeastOhm).orElseThrow();
        double uncertaintyOhm = in.accuracyPercent() / 100 * isolationOhm;
        double limitOhm = in.limitOhmPerVolt() * in.workingV();
        double ohmPerVolt = isolationOhm / in.workingV();
        boolean openEnded = in.atLeastOhm().isPresent();
        Decision judged = Limit.atLeast(limitOhm).judge(isolationOhm, uncertaintyOhm, "ohm");
        Decision decision = openEnded && judged.verdict() == Verdict.FAIL ? judged.as(Verdict.UNDECIDED) : judged;
        return Answer.worked(new Working<>(
                new Results(isolationOhm, ohmPerVolt, limitOhm, uncertaintyOhm, openEnded),
                Optional.of(decision),
                decision.because(
                        openEnded ? "isolation-direct.open" : name(),
                        Plain.beside(limitOhm, isolationOhm),
                        limitOhm,
                        Plain.beside(0, uncertaintyOhm)),
                List.of(
                        Step.of("perVolt", "Ri / Uw", ohmPerVolt, "ohm/V", "%s / %s", isolationOhm, in.workingV()),
                        Step.of("limit", "limit · Uw", limitOhm, "ohm", "%s · %s", in.limitOhmPerVolt(), in.workingV()),
                        Step.of(
                                "uncertainty",
                                "U = accuracy · R",
                                uncertaintyOhm,
                                "ohm",
                                "%s %% · %s",
                                in.accuracyPercent(),
                                isolationOhm)),
                sources(),
                cautions()));
    }
}

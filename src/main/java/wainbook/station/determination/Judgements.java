package wainbook.station.determination;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.Decision;
import wainbook.engineering.Limit;
import wainbook.engineering.Verdict;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.By;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Judgement;

/** The decisions on one value, each kept clear of its limit by the whole uncertainty. */
public final class Judgements {

    private Judgements() {}

    public static Judgement law(Decision decision, String source) {
        return new Judgement(
                By.LAW,
                decision.lower().map(Figures::kept),
                decision.upper().map(Figures::kept),
                Optional.of(source),
                finding(decision.verdict()));
    }

    /** An instrument that stops short of the limit decides nothing: what it stands for may reach it. */
    public static Judgement works(Limits limits, double value, double uncertainty, String unit, boolean openEnded) {
        Verdict lower = limits.lower()
                .map(limit -> Limit.atLeast(limit.doubleValue())
                        .judge(value, uncertainty, unit)
                        .verdict())
                .orElse(Verdict.PASS);
        Verdict upper = limits.upper()
                .map(limit -> (limits.strict() ? Limit.below(limit.doubleValue()) : Limit.atMost(limit.doubleValue()))
                        .judge(value, uncertainty, unit)
                        .verdict())
                .orElse(Verdict.PASS);
        Finding finding = worst(List.of(finding(lower), finding(upper)));
        return new Judgement(
                By.WORKS,
                limits.lower(),
                limits.upper(),
                limits.source(),
                openEnded && finding == Finding.FAIL ? Finding.UNDECIDED : finding);
    }

    public static Judgement calculated(BigDecimal lower, BigDecimal upper, double value, double uncertainty) {
        Judgement like = works(Limits.between(lower, upper), value, uncertainty, "s", false);
        return new Judgement(By.CALCULATED, like.lower(), like.upper(), Optional.empty(), like.finding());
    }

    public static Finding finding(Verdict verdict) {
        return switch (verdict) {
            case PASS, NONE -> Finding.PASS;
            case FAIL -> Finding.FAIL;
            case UNDECIDED -> Finding.UNDECIDED;
        };
    }

    /** One failure fails, one doubt leaves all undecided. */
    public static Finding worst(List<Finding> findings) {
        if (findings.contains(Finding.FAIL)) {
            return Finding.FAIL;
        }
        return findings.contains(Finding.UNDECIDED) ? Finding.UNDECIDED : Finding.PASS;
    }
}

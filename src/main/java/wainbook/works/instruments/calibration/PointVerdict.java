package wainbook.works.instruments.calibration;

import java.math.BigDecimal;
import java.util.List;
import wainbook.engineering.Limit;
import wainbook.engineering.Verdict;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;

/**
 * How points stand against the permitted deviation: |error| + W within it passes, |error| − W beyond it fails, between the two
 * nothing is shown (guard band of ILAC-G8:09/2019 4.2.2). All points must pass.
 */
public final class PointVerdict {

    private PointVerdict() {}

    public static Verdict of(CalibrationPoint point, BigDecimal permittedPercent) {
        return Limit.atMost(permittedPercent.doubleValue())
                .judge(
                        point.errorPercent().abs().doubleValue(),
                        point.expandedPercent().doubleValue(),
                        "%")
                .verdict();
    }

    /** {@code NONE} where there is no point to judge. */
    public static Verdict of(List<CalibrationPoint> points, BigDecimal permittedPercent) {
        List<Verdict> all =
                points.stream().map(point -> of(point, permittedPercent)).toList();
        if (all.isEmpty()) {
            return Verdict.NONE;
        }
        if (all.contains(Verdict.FAIL)) {
            return Verdict.FAIL;
        }
        return all.contains(Verdict.UNDECIDED) ? Verdict.UNDECIDED : Verdict.PASS;
    }

    public static Verdict asFound(Calibrated said) {
        return said.permittedPercent()
                .map(permitted -> of(said.asFound(), permitted))
                .orElse(Verdict.NONE);
    }

    public static Verdict asLeft(Calibrated said) {
        return said.permittedPercent()
                .map(permitted -> of(said.left(), permitted))
                .orElse(Verdict.NONE);
    }

    /** Whether what was measured before is in doubt: it was not shown to have been within what is permitted. */
    public static boolean putsInDoubt(Calibrated said) {
        Verdict found = asFound(said);
        return found == Verdict.FAIL || found == Verdict.UNDECIDED;
    }
}

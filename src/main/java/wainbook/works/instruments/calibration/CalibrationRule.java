package wainbook.works.instruments.calibration;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.engineering.Verdict;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;

/**
 * What stands against putting a calibration on record.
 *
 * @param withdrawnOn the works' day on which it was withdrawn, where it is
 */
record CalibrationRule(Instrument instrument, Calibrations before, Optional<LocalDate> withdrawnOn, LocalDate today) {

    static final String SOURCE = "ISO 9001:2015 7.1.5.2 (clause from memory)";

    List<Reason> against(Calibrated said) {
        var against = new ArrayList<Reason>();
        days(said, against);
        if (said.certificate().isBlank()) {
            against.add(Reason.of("works.certificateMissing", SOURCE).liftedAt("#certificate"));
        }
        points(said.asFound(), "found", against);
        points(said.asLeft(), "left", against);
        if (said.permittedPercent().isEmpty() && !said.left().isEmpty()) {
            against.add(Reason.of("works.permittedMissing", SOURCE).liftedAt("#permitted"));
        }
        adjustment(said, against);
        return against;
    }

    /** Whether it is older than one on record: it is kept, and changes nothing of how the instrument stands. */
    boolean history(Calibrated said) {
        return before.latest().filter(last -> said.on().isBefore(last.on())).isPresent();
    }

    private void days(Calibrated said, List<Reason> against) {
        if (said.on().isAfter(today)) {
            against.add(Reason.of("works.calibratedInFuture", SOURCE, said.on()).liftedAt("#on"));
        }
        withdrawnOn
                .filter(day -> said.on().isBefore(day) && !history(said))
                .ifPresent(day -> against.add(Reason.of("works.calibratedBeforeWithdrawal", SOURCE, said.on(), day)
                        .liftedAt("#on")));
        boolean goesBack = said.adjustment() != Adjustment.WITHDRAWN;
        if (goesBack && said.due().isEmpty()) {
            against.add(Reason.of("works.dueMissing", SOURCE).liftedAt("#due"));
        }
        said.due()
                .filter(due -> !due.isAfter(said.on()))
                .ifPresent(due -> against.add(
                        Reason.of("works.dueTooEarly", SOURCE, due, said.on()).liftedAt("#due")));
    }

    private void points(List<CalibrationPoint> points, String table, List<Reason> against) {
        BigDecimal last = null;
        for (int i = 0; i < points.size(); i++) {
            CalibrationPoint point = points.get(i);
            String field = "#" + table + (i + 1) + "Target";
            if (!instrument.covers(point.target())) {
                against.add(Reason.of(
                                "works.pointOutsideRange",
                                SOURCE,
                                point.target().toPlainString(),
                                instrument.lower().toPlainString(),
                                instrument.upper().toPlainString(),
                                instrument.unit())
                        .liftedAt(field));
            }
            if (last != null && point.target().compareTo(last) <= 0) {
                against.add(Reason.of(
                                "works.pointsNotRising", SOURCE, point.target().toPlainString())
                        .liftedAt(field));
            }
            last = point.target();
        }
    }

    private void adjustment(Calibrated said, List<Reason> against) {
        boolean changed = said.adjustment() == Adjustment.ADJUSTED || said.adjustment() == Adjustment.REPAIRED;
        if (!changed && !said.asLeft().isEmpty()) {
            against.add(Reason.of("works.leftWithoutAdjustment", SOURCE).liftedAt("#adjustment"));
        }
        if (changed && said.asLeft().isEmpty()) {
            against.add(Reason.of("works.leftMissing", SOURCE).liftedAt("#left1Target"));
        }
        Verdict left = PointVerdict.asLeft(said);
        boolean unfit = left == Verdict.FAIL || left == Verdict.UNDECIDED;
        if (unfit && said.adjustment() != Adjustment.WITHDRAWN && !history(said)) {
            against.add(Reason.of(
                            "works.leftUnfit",
                            SOURCE,
                            said.permittedPercent().orElseThrow().toPlainString())
                    .liftedAt("#adjustment"));
        }
    }
}

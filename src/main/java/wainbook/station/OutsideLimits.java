package wainbook.station;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import wainbook.page.Words;
import wainbook.process.Joint.Window;
import wainbook.process.Limits;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tightened;

/** What of an entry was outside which limit, in words. */
final class OutsideLimits {

    private OutsideLimits() {}

    static String of(Result result) {
        if (result instanceof Measured measured) {
            return reading(measured);
        }
        if (result instanceof Tightened joint) {
            return joint.boltsOutside().stream().map(bolt -> bolt(joint, bolt)).collect(Collectors.joining(", "));
        }
        return result.about().item();
    }

    /** By the law's limit where that is missed, since no works may grant it. */
    private static String reading(Measured measured) {
        Limits missed = measured.legal()
                .filter(limits -> !limits.admits(measured.reading()))
                .or(measured::works)
                .or(measured::legal)
                .orElseThrow();
        return Words.of(
                "station.readingOutside", measured.reading().toPlainString(), measured.unit(), Wanted.said(missed));
    }

    private static String bolt(Tightened joint, int bolt) {
        BigDecimal torqueNm = joint.boltsNm().get(bolt - 1);
        Window limitsNm = joint.torque().limitsNm();
        if (!limitsNm.holds(torqueNm)) {
            BigDecimal missed = torqueNm.compareTo(limitsNm.lower()) < 0 ? limitsNm.lower() : limitsNm.upper();
            return Words.of("station.boltOutside", bolt, torqueNm.toPlainString(), missed.toPlainString());
        }
        return joint.angle()
                .map(angle -> angle.degrees())
                .filter(degrees -> !degrees.holds(joint.anglesDeg().get(bolt - 1)))
                .map(degrees -> Words.of(
                        "station.boltAngleOutside",
                        bolt,
                        joint.anglesDeg().get(bolt - 1).toPlainString(),
                        degrees.lower().toPlainString(),
                        degrees.upper().toPlainString()))
                .orElseGet(() -> Words.of("station.boltTooNear", bolt, torqueNm.toPlainString()));
    }
}

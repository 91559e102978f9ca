package wainbook.station.page;

import wainbook.page.Words;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.joint.BoltReading;
import wainbook.station.joint.RecheckInWords;
import wainbook.station.words.Wanted;

/** What of an entry was outside which limit, in words. */
final class OutsideLimits {

    private OutsideLimits() {}

    static String of(Result result) {
        if (result instanceof Measured measured) {
            return reading(measured);
        }
        if (result instanceof Tightened joint) {
            return String.join(", ", BoltReading.findings(joint));
        }
        if (result instanceof Determined said) {
            return String.join("; ", DeterminedInWords.findings(said));
        }
        if (result instanceof Rechecked check) {
            return String.join(", ", RecheckInWords.findings(check));
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
}

package wainbook.station.judgement;

import java.util.Optional;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.NoConcession;
import wainbook.process.determination.Method;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.station.ItemFold;
import wainbook.station.ItemState;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.By;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;

/** When a failed result opens a nonconformity of its own accord, and when no concession can be given for it. */
public final class NonconformityRules {

    private NonconformityRules() {}

    public static Optional<Cause> cause(ItemState before, Result result) {
        if (result.verdict() == Verdict.PASS || ItemFold.secondHit(result)) {
            return Optional.empty();
        }
        if (result instanceof Tightened joint && joint.jointClass() == JointClass.A && overTightened(joint)) {
            return Optional.of(Cause.OVER_TIGHTENED);
        }
        if (result instanceof Rechecked check && check.way() == CheckWay.BY_MARK) {
            return Optional.of(Cause.MOVED_AT_CHECK);
        }
        if (result instanceof Determined said && said.finding() == Finding.FAIL) {
            if (said.method().insulation()) {
                return Optional.of(Cause.INSULATION);
            }
            if (said.method() == Method.BONDING) {
                return Optional.of(Cause.BONDING);
            }
        }
        if (before.item().asks() instanceof Ask.Measure measure) {
            String calculation = measure.calculation().orElse("");
            if (calculation.startsWith("isolation")) {
                return Optional.of(Cause.INSULATION);
            }
            if (calculation.equals("bonding")) {
                return Optional.of(Cause.BONDING);
            }
        }
        return before.failures() + 1 >= before.item().tries() ? Optional.of(Cause.TRIES_USED_UP) : Optional.empty();
    }

    public static Optional<NoConcession> noConcession(CheckItem item, Result result) {
        boolean legal = result instanceof Measured measured
                && measured.legal()
                        .filter(limits -> !limits.admits(measured.reading()))
                        .isPresent();
        boolean table =
                result instanceof Tabled tabled && tabled.outside().stream().anyMatch(StationSaying.CellOutside::legal);
        boolean determined = result instanceof Determined said
                && said.judgements().stream()
                        .anyMatch(judgement -> judgement.by() == By.LAW && judgement.finding() != Finding.PASS);
        return legal || table || determined
                ? Optional.of(NoConcession.LEGAL_LIMIT)
                : item.noConcession().map(NoConcession::of);
    }

    private static boolean overTightened(Tightened joint) {
        return joint.boltsNm().stream()
                        .anyMatch(torque ->
                                torque.compareTo(joint.torque().limitsNm().upper()) > 0)
                || joint.angle().stream()
                        .anyMatch(angle -> joint.anglesDeg().stream()
                                .anyMatch(degrees ->
                                        degrees.compareTo(angle.degrees().upper()) > 0));
    }
}

package wainbook.station.joint;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Words;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.GuardedLimits;
import wainbook.process.joint.Joint;
import wainbook.station.StationSaying.Rechecked;

/** The check of a tightened joint in words: what it asks for, and what it came to. */
public final class RecheckInWords {

    private RecheckInWords() {}

    /** What the person at the joint is to do. */
    public static String wanted(Joint joint) {
        String checkNm = CheckWay.checkNm(joint).toPlainString();
        String targetNm = joint.torque().targetNm().toPlainString();
        return switch (CheckWay.of(joint)) {
            case BY_MARK -> Words.of("station.recheckByMark", checkNm, targetNm);
            case RESIDUAL ->
                Words.of(
                        "station.recheckResidual",
                        joint.residualNm().orElseThrow().lower().toPlainString(),
                        joint.residualNm().orElseThrow().upper().toPlainString());
            case FIRST_MOTION -> Words.of("station.recheckFirstMotion", checkNm);
        };
    }

    /** What was read, and by which limits. */
    public static String figures(Rechecked said) {
        String moved = said.movedAtNm().stream().map(BigDecimal::toPlainString).collect(Collectors.joining(" / "));
        return switch (said.way()) {
            case BY_MARK ->
                Words.of(
                        "station.recheckedByMark",
                        said.checkedAtNm().map(BigDecimal::toPlainString).orElse("–"),
                        said.found().size());
            case RESIDUAL ->
                Words.of(
                        "station.recheckedResidual",
                        moved,
                        said.residualNm()
                                .map(Joint.Window::lower)
                                .map(BigDecimal::toPlainString)
                                .orElse("–"),
                        said.residualNm()
                                .map(Joint.Window::upper)
                                .map(BigDecimal::toPlainString)
                                .orElse("–"));
            case FIRST_MOTION -> Words.of("station.recheckedFirstMotion", moved);
        };
    }

    /** The fasteners that do not pass, one by one. */
    public static List<String> findings(Rechecked said) {
        return said.boltsFailing().stream().map(bolt -> finding(said, bolt)).toList();
    }

    private static String finding(Rechecked said, int bolt) {
        return switch (said.way()) {
            case BY_MARK ->
                Words.of("station.found." + said.found().get(bolt - 1).name() + "At", bolt);
            case FIRST_MOTION ->
                Words.of(
                        "station.movedEarly",
                        bolt,
                        said.movedAtNm().get(bolt - 1).toPlainString());
            case RESIDUAL -> residual(said, bolt);
        };
    }

    private static String residual(Rechecked said, int bolt) {
        BigDecimal movedAtNm = said.movedAtNm().get(bolt - 1);
        Optional<Joint.Window> limitsNm = said.residualNm();
        if (limitsNm.filter(window -> window.holds(movedAtNm)).isPresent()) {
            var guarded = new GuardedLimits(
                    limitsNm.get(), said.guard().toolPercent(), said.guard().decisionFactor());
            return Words.of(
                    "station.residualNotShown",
                    bolt,
                    movedAtNm.toPlainString(),
                    guarded.lowerShown(),
                    guarded.upperShown());
        }
        boolean low = limitsNm.filter(window -> movedAtNm.compareTo(window.lower()) < 0)
                .isPresent();
        return Words.of(low ? "station.residualLow" : "station.residualHigh", bolt, movedAtNm.toPlainString());
    }
}

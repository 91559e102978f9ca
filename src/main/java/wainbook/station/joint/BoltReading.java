package wainbook.station.joint;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.page.Words;
import wainbook.process.joint.GuardedLimits;
import wainbook.process.joint.Joint;
import wainbook.process.joint.Suspect;
import wainbook.station.StationSaying.Tightened;

/**
 * What a tightening came to at one fastener, read from its entry.
 *
 * @param bolt its number in the order of tightening, from 1
 */
public record BoltReading(Tightened said, int bolt) {

    /** How it was judged. */
    public enum Finding {
        PASSES,
        /** Inside the limits, but nearer to one than the tool can tell: no pass. */
        NOT_SHOWN,
        FAILS
    }

    public static List<BoltReading> of(Tightened said) {
        return IntStream.rangeClosed(1, said.boltsNm().size())
                .mapToObj(bolt -> new BoltReading(said, bolt))
                .toList();
    }

    /** Those that do not pass, in words. */
    public static List<String> findings(Tightened said) {
        return said.boltsOutside().stream()
                .map(bolt -> new BoltReading(said, bolt).inWords())
                .toList();
    }

    /** Whether nothing fails and something is not shown to conform. */
    public static boolean undecided(Tightened said) {
        return !said.boltsOutside().isEmpty()
                && said.boltsOutside().stream()
                        .allMatch(bolt -> new BoltReading(said, bolt).finding() == Finding.NOT_SHOWN);
    }

    /** Whether what does not pass are second hits and nothing else: then nothing was tightened. */
    public static boolean onlySecondHits(Tightened said) {
        return !said.boltsOutside().isEmpty()
                && said.boltsOutside().stream()
                        .allMatch(bolt -> new BoltReading(said, bolt)
                                .suspect()
                                .filter(suspect -> suspect == Suspect.SECOND_HIT)
                                .isPresent());
    }

    public Finding finding() {
        if (!said.boltsOutside().contains(bolt)) {
            return Finding.PASSES;
        }
        boolean inside = limitsNm().holds(torqueNm())
                && windowDegrees().map(window -> window.holds(degrees())).orElse(true);
        return inside ? Finding.NOT_SHOWN : Finding.FAILS;
    }

    public Optional<Suspect> suspect() {
        return windowDegrees().flatMap(window -> Suspect.of(limitsNm(), window, torqueNm(), degrees()));
    }

    public BigDecimal torqueNm() {
        return said.boltsNm().get(bolt - 1);
    }

    /** Where the calculation stands open with this reading; empty where the entry does not keep the uncertainty. */
    public Optional<String> calculation() {
        return guarded().map(limits -> limits.calculation(torqueNm()));
    }

    /** What was outside which limit, or not shown to be inside, and what torque and angle together let one suspect. */
    public String inWords() {
        return suspect()
                .map(suspect -> Words.of("station.boltSuspect", missed(), suspect.inWords()))
                .orElse(missed());
    }

    private String missed() {
        if (!limitsNm().holds(torqueNm())) {
            BigDecimal limitNm = torqueNm().compareTo(limitsNm().lower()) < 0
                    ? limitsNm().lower()
                    : limitsNm().upper();
            return Words.of("station.boltOutside", bolt, torqueNm().toPlainString(), limitNm.toPlainString());
        }
        return windowDegrees()
                .filter(window -> !window.holds(degrees()))
                .map(window -> Words.of(
                        "station.boltAngleOutside",
                        bolt,
                        degrees().toPlainString(),
                        window.lower().toPlainString(),
                        window.upper().toPlainString()))
                .orElseGet(this::tooNear);
    }

    private String tooNear() {
        return guarded()
                .map(limits -> limits.passesNothing()
                        ? Words.of("station.boltToolTooCoarse", bolt, torqueNm().toPlainString())
                        : Words.of(
                                "station.boltNotShown",
                                bolt,
                                torqueNm().toPlainString(),
                                limits.lowerShown(),
                                limits.upperShown()))
                .orElseGet(
                        () -> Words.of("station.boltTooNear", bolt, torqueNm().toPlainString()));
    }

    private Optional<GuardedLimits> guarded() {
        return said.guard().map(guard -> new GuardedLimits(limitsNm(), guard.toolPercent(), guard.decisionFactor()));
    }

    private Joint.Window limitsNm() {
        return said.torque().limitsNm();
    }

    private Optional<Joint.Window> windowDegrees() {
        return said.angle().map(Joint.Angle::degrees);
    }

    private BigDecimal degrees() {
        return said.anglesDeg().get(bolt - 1);
    }
}

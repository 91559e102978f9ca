package wainbook.process.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wainbook.act.Reason;
import wainbook.engineering.Plain;
import wainbook.engineering.tightening.BoltClass;
import wainbook.engineering.tightening.HexagonBolt;
import wainbook.engineering.tightening.Preload;
import wainbook.page.Words;

/**
 * What a joint's torque limits do to its bolts: preload and use of the yield strength at both limits and both ends of the
 * friction ({@link Preload}). Only what stands in the joint as size, pitch and property class is read, for hexagon bolts in
 * medium holes; anything else is not guessed at.
 */
public record BoltLoad(Joint joint, HexagonBolt bolt, double pitchMm, BoltClass propertyClass, Friction friction) {

    private static final String SOURCE = "VDI 2230-1 and ISO 898-1, from memory";
    private static final Pattern BOLT =
            Pattern.compile("M(\\d{1,2})(?:\\s*[x×]\\s*(\\d(?:[.]\\d{1,2})?))?\\s+(8[.]8|10[.]9|12[.]9)(?![.\\d])(.*)");
    private static final double YIELDS = 1;
    private static final double NEAR_YIELD = 0.9;

    /** Empty where the thread does not say enough. */
    public static Optional<BoltLoad> of(Joint joint) {
        Matcher said = BOLT.matcher(joint.thread().orElse(""));
        if (!said.matches()) {
            return Optional.empty();
        }
        return HexagonBolt.ofDiameter(Integer.parseInt(said.group(1)))
                .map(bolt -> new BoltLoad(
                        joint,
                        bolt,
                        said.group(2) == null ? bolt.coarsePitchMm() : Double.parseDouble(said.group(2)),
                        BoltClass.of(said.group(3)).orElseThrow(),
                        Friction.of(said.group(4))))
                .filter(load -> load.pitchMm > 0 && load.pitchMm <= load.bolt.coarsePitchMm());
    }

    /** What the joint's page says of its preload; where nothing can be worked out, why. */
    public static String inWords(Joint joint) {
        return of(joint)
                .map(BoltLoad::inWords)
                .orElseGet(
                        () -> Words.of(joint.thread().isEmpty() ? "process.preloadNoThread" : "process.preloadUnread"));
    }

    /** At one torque and friction: preload in N and the share of the yield strength that is used. */
    public Preload.Results at(BigDecimal torqueNm, double coefficient) {
        return new Preload()
                .of(inputs(torqueNm, coefficient))
                .fold(
                        working -> working.results(),
                        faults -> {
                            throw new IllegalStateException("a bolt of the tables is no bolt: " + faults);
                        },
                        impossible -> {
                            throw new IllegalStateException("a bolt of the tables is impossible: " + impossible);
                        });
    }

    /** The worst: all of the torque and little friction. */
    public double mostUse() {
        return at(upperNm(), friction.low()).utilisation();
    }

    /** A caution above the yield strength, a remark above nine tenths of it. */
    public Optional<Reason> remark() {
        double use = Plain.compared(mostUse());
        if (use <= NEAR_YIELD) {
            return Optional.empty();
        }
        return Optional.of(Reason.of(
                use > YIELDS ? "process.overYield" : "process.nearYield",
                SOURCE,
                joint.code(),
                upperNm().toPlainString(),
                Plain.text(friction.low()),
                percent(use)));
    }

    /** Where the calculation of the worst case stands open. */
    public String calculation() {
        Preload.Inputs asked = inputs(upperNm(), friction.low());
        return "/calculations/preload?torqueNm=" + upperNm().toPlainString()
                + "&diameterMm=" + Plain.text(asked.diameterMm())
                + "&pitchMm=" + Plain.text(asked.pitchMm())
                + "&yieldMPa=" + Plain.text(asked.yieldMPa())
                + "&threadFriction=" + Plain.text(asked.threadFriction())
                + "&headFriction=" + Plain.text(asked.headFriction())
                + "&bearingMeanMm=" + Plain.text(asked.bearingMeanMm());
    }

    private String inWords() {
        return Words.of(
                friction.stated() ? "process.preloadStated" : "process.preloadTaken",
                lowerNm().toPlainString(),
                kilonewtons(at(lowerNm(), friction.high()).preloadN()),
                kilonewtons(at(lowerNm(), friction.low()).preloadN()),
                upperNm().toPlainString(),
                kilonewtons(at(upperNm(), friction.high()).preloadN()),
                kilonewtons(at(upperNm(), friction.low()).preloadN()),
                percent(at(lowerNm(), friction.high()).utilisation()),
                percent(mostUse()),
                Plain.text(friction.low()),
                Plain.text(friction.high()));
    }

    private Preload.Inputs inputs(BigDecimal torqueNm, double coefficient) {
        return new Preload.Inputs(
                Optional.of(torqueNm.doubleValue()),
                Optional.empty(),
                bolt.diameterMm(),
                pitchMm,
                propertyClass.yieldMPa(bolt.diameterMm()),
                coefficient,
                coefficient,
                bolt.bearingMeanMm());
    }

    private BigDecimal lowerNm() {
        return joint.torque().limitsNm().lower();
    }

    private BigDecimal upperNm() {
        return joint.torque().limitsNm().upper();
    }

    private static String kilonewtons(double newtons) {
        return BigDecimal.valueOf(newtons / 1000)
                .setScale(1, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** Rounded up to whole percent: what is above a limit never reads as on it. */
    private static String percent(double share) {
        return BigDecimal.valueOf(Plain.compared(share * 100))
                .setScale(0, RoundingMode.CEILING)
                .toPlainString();
    }
}

package wainbook.process.calibration;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;
import wainbook.process.Code;

/**
 * A calibration of one kind of vehicle: one revision of it, which never changes but for its standing.
 *
 * @param fileSha256 fingerprint of the file that goes into the control unit, 64 hexadecimal digits
 * @param roadSpeedLimitKmh absent where the calibration does not set it, as all values are
 * @param accelerationLimitMps2 held constant over load
 * @param liftOffMps2 deceleration with both pedals up
 * @param brakeSharePercent of the braking asked for that is taken by regeneration first
 */
public record Calibration(
        String code,
        int revision,
        String vehicleKind,
        String title,
        String fileSha256,
        Standing standing,
        Optional<BigDecimal> roadSpeedLimitKmh,
        Optional<BigDecimal> accelerationLimitMps2,
        Optional<BigDecimal> liftOffMps2,
        Optional<BigDecimal> brakeSharePercent,
        Optional<BigDecimal> creepKmh,
        Optional<BigDecimal> reverseKmh) {

    /** Whether a vehicle may still be given it. */
    public enum Standing {
        RELEASED,
        WITHDRAWN
    }

    public Calibration {
        Code.checked("a calibration", code);
        if (revision < 1) {
            throw new IllegalArgumentException("revisions count from 1, not " + revision);
        }
        Code.titled("a calibration", title);
        if (!fileSha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "the SHA-256 of a file is 64 hexadecimal digits in lower case, not " + fileSha256);
        }
        check(Setting.ROAD_SPEED_LIMIT, roadSpeedLimitKmh);
        check(Setting.ACCELERATION_LIMIT, accelerationLimitMps2);
        check(Setting.LIFT_OFF_REGENERATION, liftOffMps2);
        check(Setting.BRAKE_REGENERATION_SHARE, brakeSharePercent);
        check(Setting.CREEP_SPEED, creepKmh);
        check(Setting.REVERSE_SPEED, reverseKmh);
        if (Arrays.stream(Setting.values())
                .allMatch(setting -> value(
                                setting,
                                roadSpeedLimitKmh,
                                accelerationLimitMps2,
                                liftOffMps2,
                                brakeSharePercent,
                                creepKmh,
                                reverseKmh)
                        .isEmpty())) {
            throw new IllegalArgumentException("a calibration sets one value at least");
        }
    }

    private static void check(Setting setting, Optional<BigDecimal> value) {
        value.filter(Predicate.not(setting::plausible)).ifPresent(wrong -> {
            throw new IllegalArgumentException(
                    setting.quantity() + " lies between " + setting.least().toPlainString() + " and "
                            + setting.most().toPlainString() + " " + setting.unit() + ", not at " + wrong);
        });
    }

    /** How it is named at the vehicle: code and revision. */
    public String name() {
        return code + "/" + revision;
    }

    public boolean released() {
        return standing == Standing.RELEASED;
    }

    public Optional<BigDecimal> value(Setting setting) {
        return value(
                setting,
                roadSpeedLimitKmh,
                accelerationLimitMps2,
                liftOffMps2,
                brakeSharePercent,
                creepKmh,
                reverseKmh);
    }

    /** Whether the other one says the same but for its standing. */
    public boolean sameValues(Calibration other) {
        return new Calibration(
                        code,
                        revision,
                        vehicleKind,
                        title,
                        fileSha256,
                        other.standing,
                        roadSpeedLimitKmh,
                        accelerationLimitMps2,
                        liftOffMps2,
                        brakeSharePercent,
                        creepKmh,
                        reverseKmh)
                .equals(other);
    }

    private static Optional<BigDecimal> value(
            Setting setting,
            Optional<BigDecimal> speed,
            Optional<BigDecimal> acceleration,
            Optional<BigDecimal> liftOff,
            Optional<BigDecimal> share,
            Optional<BigDecimal> creep,
            Optional<BigDecimal> reverse) {
        return switch (setting) {
            case ROAD_SPEED_LIMIT -> speed;
            case ACCELERATION_LIMIT -> acceleration;
            case LIFT_OFF_REGENERATION -> liftOff;
            case BRAKE_REGENERATION_SHARE -> share;
            case CREEP_SPEED -> creep;
            case REVERSE_SPEED -> reverse;
        };
    }
}

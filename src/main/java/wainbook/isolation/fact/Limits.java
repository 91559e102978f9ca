package wainbook.isolation.fact;

import java.math.BigDecimal;
import java.time.Duration;
import wainbook.process.plan.Point.Pair;

/**
 * The works’ figures for an isolation, copied into it when it is planned. To be confirmed by the works’ own authorised
 * electrical person.
 *
 * @param deadVolt highest reading that counts as dead, in volts
 * @param dangerDcVolt direct voltage above which a reading voids, in volts; never above 60
 * @param dangerAcVolt alternating voltage above which a reading voids, in volts; never above 30
 * @param riseVolt how much a reading may have risen at the second touch, in volts
 * @param reprobeAfterSeconds least time between the two touches of a point
 * @param pointSeconds least time between two points: no hand is quicker
 * @param windowBaseSeconds and windowPointSeconds the proving window: base plus that much for each point
 * @param permitWithinMinutes longest time from the tester proved after to work
 * @param testerPercent how far the tester may read from the known source, in per cent of it
 */
public record Limits(
        BigDecimal deadVolt,
        BigDecimal dangerDcVolt,
        BigDecimal dangerAcVolt,
        BigDecimal riseVolt,
        int reprobeAfterSeconds,
        int pointSeconds,
        int windowBaseSeconds,
        int windowPointSeconds,
        int permitWithinMinutes,
        int testerPercent) {

    private static final BigDecimal CLASS_A_DC_VOLT = new BigDecimal("60");
    private static final BigDecimal CLASS_A_AC_VOLT = new BigDecimal("30");

    public Limits {
        if (dangerDcVolt.compareTo(CLASS_A_DC_VOLT) > 0 || dangerAcVolt.compareTo(CLASS_A_AC_VOLT) > 0) {
            throw new IllegalArgumentException("the danger limits are at most 60 V DC and 30 V AC");
        }
        if (deadVolt.compareTo(dangerAcVolt) > 0 || deadVolt.signum() < 0 || riseVolt.signum() < 0) {
            throw new IllegalArgumentException("the dead limit lies between zero and the danger limits");
        }
    }

    /**
     * 60 V DC and 30 V AC: upper edge of voltage class A, ISO 6469-3 clause 4 (clause from memory). 5 V, the 1 V rise,
     * 60 s, 5 s a point, 30 minutes and 10 per cent: common practice, no source. The window of 5 minutes and 2 for each
     * point is a works rule; it gives the usual 15 minutes at five points.
     */
    public static Limits usual() {
        return new Limits(
                new BigDecimal("5"), CLASS_A_DC_VOLT, CLASS_A_AC_VOLT, BigDecimal.ONE, 60, 5, 300, 120, 30, 10);
    }

    public Duration window(int points) {
        return Duration.ofSeconds(windowBaseSeconds + (long) points * windowPointSeconds);
    }

    public boolean dead(BigDecimal volt) {
        return volt.abs().compareTo(deadVolt) <= 0;
    }

    public boolean dangerous(Pair pair, BigDecimal volt) {
        return volt.abs().compareTo(pair.alternating() ? dangerAcVolt : dangerDcVolt) > 0;
    }

    public boolean agrees(BigDecimal readingVolt, BigDecimal sourceVolt) {
        var allowed = sourceVolt.abs().multiply(BigDecimal.valueOf(testerPercent, 2));
        return readingVolt.subtract(sourceVolt).abs().compareTo(allowed) <= 0;
    }
}

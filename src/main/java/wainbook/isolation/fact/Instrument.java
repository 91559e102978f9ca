package wainbook.isolation.fact;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Optional;
import wainbook.isolation.IsolationSaying;

/**
 * An instrument or a piece of protective equipment as the works holds it today.
 *
 * @param ratedVolt what it is rated for, in volts
 * @param validUntil calibration or test is good before this instant
 * @param withdrawnFrom from when on its results are in doubt
 * @param inUseAt the other vehicle at which it is being used at this moment
 */
public record Instrument(
        String code,
        Sort sort,
        BigDecimal ratedVolt,
        Instant validUntil,
        Optional<Instant> withdrawnFrom,
        Optional<String> inUseAt) {

    /** Non-contact sticks see no direct voltage and so are no sort that proves anything. */
    public enum Sort {
        TWO_POLE_DETECTOR,
        MULTIMETER,
        DIRECT_VOLTAGE_PROVING_UNIT,
        INSULATION_TESTER,
        GLOVES,
        OTHER;

        public boolean provesDead() {
            return this == TWO_POLE_DETECTOR || this == MULTIMETER;
        }
    }

    public boolean validAt(Instant time) {
        return time.isBefore(validUntil) && !doubtedAt(time);
    }

    public boolean doubtedAt(Instant time) {
        return withdrawnFrom.filter(from -> !from.isAfter(time)).isPresent();
    }

    public IsolationSaying.Used used() {
        return new IsolationSaying.Used(code, sort, ratedVolt, validUntil);
    }
}

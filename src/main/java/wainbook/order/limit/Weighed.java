package wainbook.order.limit;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A vehicle as limits of weight see it; what is not known is absent.
 *
 * @param otherEngine an engine for a cold unit or a pump, which may end 'without emissions'; a fuel-fired heater is none (reasoned, no source)
 * @param extraMassKg what the technology weighs more than the one it replaces
 * @param firstToLastM from first to last axle
 */
public record Weighed(
        LocalDate day,
        int axles,
        Body body,
        Optional<Boolean> twinAir,
        Optional<Boolean> otherEngine,
        Optional<Integer> extraMassKg,
        Optional<Double> firstToLastM) {}

package wainbook.station;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.process.Ask;
import wainbook.process.Joint;

/**
 * The instrument that an item is recorded with.
 *
 * @param values it must cover: a wrench the joint's limits; what a meter shows may be anything in its range
 */
public record ToolNeeded(String kind, List<BigDecimal> values) {

    public ToolNeeded {
        values = List.copyOf(values);
    }

    /** Empty where an item is recorded without an instrument. */
    public static Optional<ToolNeeded> of(Ask asks, Optional<Joint> joint) {
        if (asks instanceof Ask.Measure measure) {
            return measure.instrumentKind().map(kind -> new ToolNeeded(kind, List.of()));
        }
        return joint.filter(known -> asks instanceof Ask.Tighten)
                .map(known -> new ToolNeeded(
                        known.toolKind(),
                        List.of(
                                known.torque().limitsNm().lower(),
                                known.torque().limitsNm().upper())));
    }
}

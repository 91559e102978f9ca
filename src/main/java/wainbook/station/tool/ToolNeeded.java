package wainbook.station.tool;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;

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
        if (asks instanceof Ask.Table table) {
            return table.instrumentKind().map(kind -> new ToolNeeded(kind, List.of()));
        }
        if (asks instanceof Ask.Determine determine) {
            return determine.instrumentKind().map(kind -> new ToolNeeded(kind, List.of()));
        }
        if (asks instanceof Ask.Recheck) {
            return joint.map(known -> new ToolNeeded(known.toolKind(), checkedAtNm(known)));
        }
        return joint.filter(known -> asks instanceof Ask.Tighten)
                .map(known -> new ToolNeeded(
                        known.toolKind(),
                        List.of(
                                known.torque().limitsNm().lower(),
                                known.torque().limitsNm().upper())));
    }

    private static List<BigDecimal> checkedAtNm(Joint joint) {
        return switch (CheckWay.of(joint)) {
            case BY_MARK -> List.of(CheckWay.checkNm(joint));
            case RESIDUAL ->
                List.of(
                        joint.residualNm().orElseThrow().lower(),
                        joint.residualNm().orElseThrow().upper());
            case FIRST_MOTION ->
                List.of(CheckWay.checkNm(joint), joint.torque().limitsNm().upper());
        };
    }
}

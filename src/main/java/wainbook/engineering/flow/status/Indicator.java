package wainbook.engineering.flow.status;

import java.util.OptionalDouble;
import wainbook.engineering.Source;

/**
 * Key performance indicators of a station over a period, under the names that ISO 22400-2 gives them. Names and formulas were read in an
 * open ontology of the standard, which seems to follow a draft in places; the standard itself was not read.
 */
public enum Indicator {
    AVAILABILITY("Availability", "APT / PBT"),
    ALLOCATION_EFFICIENCY("Allocation efficiency", "AUBT / PBT"),
    UTILIZATION_EFFICIENCY("Utilization efficiency", "APT / AUBT"),
    EFFECTIVENESS("Effectiveness", "PRU · PQ / APT"),
    QUALITY_RATIO("Quality ratio", "GQ / PQ"),
    OEE_INDEX("OEE index", "Availability · Effectiveness · Quality ratio"),
    ALLOCATION_RATIO("Allocation ratio", "AUBT / AOET"),
    PRODUCTION_PROCESS_RATIO("Production process ratio", "APT / AOET"),
    TECHNICAL_EFFICIENCY("Technical efficiency", "APT / (APT + ADET)"),
    FIRST_PASS_YIELD("First pass yield", "GP / IP"),
    REWORK_RATIO("Rework ratio", "RQ / PQ");

    public static final Source SOURCE = Source.seen(
            "Open ontology of ISO 22400-2", "names and formulas; the text of the standard itself was not read");

    /**
     * Minutes of the period.
     *
     * @param plannedBusy PBT: working time less planned downtime
     * @param busy AUBT: used for an order
     * @param production APT: adding value
     * @param delay ADET: stopped while the work is on
     * @param plannedRunEach PRU: planned for one vehicle; not a number where it is not known
     * @param orderExecution AOET: from the begin of orders to their end, waiting included; not a number where it is not known
     */
    public record Minutes(
            double plannedBusy,
            double busy,
            double production,
            double delay,
            double plannedRunEach,
            double orderExecution) {}

    /**
     * Vehicles of the period.
     *
     * @param produced PQ
     * @param good GQ
     * @param reworked RQ
     * @param inspected IP
     * @param firstPass GP: good at their first inspection
     */
    public record Quantities(int produced, int good, int reworked, int inspected, int firstPass) {}

    private final String standardName;
    private final String formula;

    Indicator(String standardName, String formula) {
        this.standardName = standardName;
        this.formula = formula;
    }

    public String standardName() {
        return standardName;
    }

    public String formula() {
        return formula;
    }

    /** Empty where the period has nothing to divide by. */
    public OptionalDouble of(Minutes minutes, Quantities quantities) {
        double found = value(minutes, quantities);
        return Double.isFinite(found) ? OptionalDouble.of(found) : OptionalDouble.empty();
    }

    private double value(Minutes m, Quantities q) {
        return switch (this) {
            case AVAILABILITY -> m.production() / m.plannedBusy();
            case ALLOCATION_EFFICIENCY -> m.busy() / m.plannedBusy();
            case UTILIZATION_EFFICIENCY -> m.production() / m.busy();
            case EFFECTIVENESS -> m.plannedRunEach() * q.produced() / m.production();
            case QUALITY_RATIO -> q.good() / (double) q.produced();
            case ALLOCATION_RATIO -> m.busy() / m.orderExecution();
            case PRODUCTION_PROCESS_RATIO -> m.production() / m.orderExecution();
            case OEE_INDEX -> AVAILABILITY.value(m, q) * EFFECTIVENESS.value(m, q) * QUALITY_RATIO.value(m, q);
            case TECHNICAL_EFFICIENCY -> m.production() / (m.production() + m.delay());
            case FIRST_PASS_YIELD -> q.firstPass() / (double) q.inspected();
            case REWORK_RATIO -> q.reworked() / (double) q.produced();
        };
    }
}

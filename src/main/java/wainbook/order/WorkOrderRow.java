package wainbook.order;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.hibernate.orm.panache.PanacheQuery;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.page.Formats;

/** A work order as lists read it. */
@Entity
@Table(name = "work_order")
public class WorkOrderRow extends PanacheEntityBase {
    @Id
    public String number;

    public String operator;
    public String vehicleKind;
    public String variant;
    public LocalDate promisedOn;

    @Enumerated(EnumType.STRING)
    public WorkOrder.Phase phase;

    public String stage;
    public String place;

    /** The station it takes up, so that no other vehicle can; null where several may stand. */
    public String occupies;

    public Instant since;

    /** When it came onto the line first; null before that. */
    public Instant cameOnLine;

    /** When it left the line as finished; null before that. */
    public Instant leftLine;

    public String vin;

    /** The VIN, while this is the vehicle’s newest order: so a vehicle has one order at a time. */
    public String vehicleNow;

    public String registration;

    /** The order under which the vehicle was handed over before; null for a donor that is converted. */
    public String earlier;

    public int holds;

    public static List<WorkOrderRow> all() {
        return list("order by number");
    }

    public static List<WorkOrderRow> inPhase(WorkOrder.Phase phase) {
        return list("phase = ?1 order by since", phase);
    }

    /** Those that came to a phase since, and are in it still. */
    public static List<WorkOrderRow> inPhaseSince(WorkOrder.Phase phase, Instant since) {
        return list("phase = ?1 and since >= ?2 order by since", phase, since);
    }

    /**
     * Those that were on the line, or off it to come back, at some time of a period; rows made before that was kept are among them
     * where they may have been.
     */
    public static List<WorkOrderRow> onLineBetween(Instant from, Instant to) {
        return list(
                "(cameOnLine < ?2 and (leftLine is null or leftLine >= ?1))"
                        + " or (cameOnLine is null and (phase in ?3 or (phase in ?4 and since >= ?1))) order by number",
                from,
                to,
                List.of(WorkOrder.Phase.ON_LINE, WorkOrder.Phase.OFF_LINE),
                List.of(WorkOrder.Phase.FINISHED, WorkOrder.Phase.HANDED_OVER));
    }

    private static final String HOLDS_TEXT =
            "locate(lower(?1), lower(concat(number, ' ', operator, ' ', vehicleKind, ' ', variant, ' ',"
                    + " coalesce(vin, ''), ' ', coalesce(registration, '')))) > 0";

    /** Orders whose number, operator, variant, VIN or registration holds the text, in capitals or not. */
    public static PanacheQuery<WorkOrderRow> search(String text, Optional<WorkOrder.Phase> phase) {
        return phase.isPresent()
                ? find(HOLDS_TEXT + " and phase = ?2 order by number desc", text, phase.get())
                : find(HOLDS_TEXT + " order by number desc", text);
    }

    /** The same in any of the phases, promised by a day; the finished first, then those promised soonest. */
    public static PanacheQuery<WorkOrderRow> search(String text, List<WorkOrder.Phase> phases, LocalDate promisedBy) {
        return find(
                HOLDS_TEXT + " and phase in ?2 and promisedOn <= ?4"
                        + " order by case when phase = ?3 then 0 else 1 end, promisedOn, number",
                text,
                phases,
                WorkOrder.Phase.FINISHED,
                promisedBy);
    }

    public boolean cameBack() {
        return earlier != null;
    }

    /** The orders of vehicles that came back, each with the order under which it was handed over before. */
    public static Map<String, String> back() {
        return WorkOrderRow.<WorkOrderRow>list("earlier is not null").stream()
                .collect(Collectors.toMap(row -> row.number, row -> row.earlier));
    }

    public static List<WorkOrderRow> withHolds() {
        return list("holds > 0 order by number");
    }

    /** As one line of a spreadsheet. */
    public List<String> cells() {
        return List.of(
                number,
                operator,
                vehicleKind,
                variant,
                promisedOn.toString(),
                phaseWord(),
                Objects.toString(stage, ""),
                Objects.toString(place, ""),
                since.toString(),
                Objects.toString(vin, ""),
                Objects.toString(registration, ""),
                String.valueOf(holds));
    }

    public String promised() {
        return Formats.date(promisedOn);
    }

    public String phaseWord() {
        return OrderList.word(phase);
    }

    public static Optional<WorkOrderRow> occupant(String station) {
        return find("occupies", station).firstResultOptional();
    }

    /** The vehicle that stands at a station and stood there at the time already. */
    public static Optional<WorkOrderRow> occupant(String station, Instant at) {
        return occupant(station).filter(row -> !row.since.isAfter(at));
    }
}

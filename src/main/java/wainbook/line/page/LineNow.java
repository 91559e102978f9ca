package wainbook.line.page;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.line.Standing;
import wainbook.line.cause.Cause;
import wainbook.line.cause.FirstThings;
import wainbook.line.station.StationState;
import wainbook.order.OrderList;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.works.shift.Shifts;

/**
 * The line as its page shows it.
 *
 * @param first what to do first
 * @param bays vehicles off the line, to come back to it
 * @param yard vehicles before and after their way, by how far they are
 */
public record LineNow(Head head, List<Row> rows, List<FirstThings.First> first, List<Off> bays, List<Yard> yard) {

    /** As many vehicles of a sort as are named off the line; the others are counted and stand in the list of orders. */
    private static final int AT_A_GLANCE = 12;

    public LineNow {
        rows = List.copyOf(rows);
        first = List.copyOf(first);
        bays = List.copyOf(bays);
        yard = List.copyOf(yard);
    }

    /**
     * What stands over the table.
     *
     * @param shift that runs; empty off shift
     * @param nextShift when work goes on, off shift
     * @param takt the works' own, in minutes
     * @param made vehicles that left the line as finished today
     */
    public record Head(
            Instant at,
            boolean keepsShifts,
            Optional<Shifts.Span> shift,
            Optional<Instant> nextShift,
            Optional<Integer> takt,
            long made,
            long handedOver,
            long inWorks) {}

    /**
     * One station.
     *
     * @param whenWorking what would be its state if the shift began now
     * @param waitsFor the station that it waits for in the end, by its code
     */
    public record Row(
            Stage stage,
            Station station,
            boolean working,
            StationState whenWorking,
            Optional<Standing> standing,
            Optional<String> waitsFor,
            List<Cause> starved) {

        public StationState state() {
            return working ? whenWorking : StationState.OFF_SHIFT;
        }

        /** Over takt in words where it is the state. */
        public String word() {
            return state() == StationState.OVER_TAKT
                    ? Words.of("line.stateOver", standing.orElseThrow().over())
                    : state().word();
        }

        public List<Cause> causes() {
            return standing.map(Standing::causes).orElse(starved);
        }

        /** For ids on the page. */
        public String id() {
            return "at-" + station.code();
        }
    }

    /** A vehicle off the line, and why. */
    public record Off(WorkOrderRow row, Optional<String> why) {}

    /** Vehicles in the yard that are equally far. */
    public record Yard(Phase phase, List<WorkOrderRow> rows) {

        /** Those on hold first, since they wait for somebody; then whoever came first. */
        public List<WorkOrderRow> shown() {
            return rows.stream()
                    .sorted(Comparator.comparing(row -> row.holds == 0))
                    .limit(AT_A_GLANCE)
                    .toList();
        }

        public int more() {
            return Math.max(0, rows.size() - AT_A_GLANCE);
        }

        public String word() {
            return OrderList.word(phase);
        }
    }

    public long vehicles() {
        return rows.stream().filter(row -> row.standing().isPresent()).count();
    }

    public List<Off> baysShown() {
        return bays.stream().limit(AT_A_GLANCE).toList();
    }

    public int baysMore() {
        return Math.max(0, bays.size() - AT_A_GLANCE);
    }

    public boolean noneOff() {
        return bays.isEmpty() && yard.isEmpty();
    }
}

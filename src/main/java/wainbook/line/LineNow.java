package wainbook.line;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.order.WorkOrderRow;
import wainbook.page.Formats;
import wainbook.process.Stage;
import wainbook.process.Station;

/** The line as its page shows it. */
public record LineNow(Instant at, List<Row> rows, List<Off> off) {

    public LineNow {
        rows = List.copyOf(rows);
        off = List.copyOf(off);
    }

    /** One station. */
    public record Row(Stage stage, Station station, Optional<Standing> standing, List<Cause> starved) {

        public StationState state() {
            return standing.map(Standing::state).orElse(StationState.STARVED);
        }

        public List<Cause> causes() {
            return standing.map(Standing::causes).orElse(starved);
        }
    }

    /** A vehicle off the line: in a bay, or in the yard before or after its way. */
    public record Off(WorkOrderRow row, String waits) {
        static Off of(WorkOrderRow row, Instant now) {
            return new Off(row, Formats.duration(Duration.between(row.since, now)));
        }
    }

    public long vehicles() {
        return rows.stream().filter(row -> row.standing().isPresent()).count();
    }
}

package wainbook.line;

import java.util.List;
import wainbook.order.WorkOrder;
import wainbook.page.Formats;
import wainbook.page.RouteBar;

/** Where one vehicle stands, and why. */
public record Standing(
        WorkOrder order, StationState state, long minutes, double taktMin, List<Cause> causes, RouteBar bar) {

    public Standing {
        causes = List.copyOf(causes);
    }

    public String time() {
        return Formats.duration(java.time.Duration.ofMinutes(minutes));
    }

    public boolean overTakt() {
        return state == StationState.OVER_TAKT;
    }

    /** How far over the takt. */
    public String over() {
        return Formats.duration(java.time.Duration.ofMinutes(minutes - (long) taktMin));
    }
}

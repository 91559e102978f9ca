package wainbook.line;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import wainbook.line.cause.Cause;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.order.WorkOrder;
import wainbook.page.Formats;
import wainbook.page.RouteBar;

/**
 * Where one vehicle stands, and why.
 *
 * @param since when the state began, as far as the record shows
 * @param minutes working minutes at the station
 * @param settled items of the stage that are settled, of all {@code items}
 * @param calls for help that are not settled
 */
public record Standing(
        WorkOrder order,
        StationState state,
        Instant since,
        long minutes,
        double allowedMin,
        int settled,
        int items,
        int calls,
        List<Cause> causes,
        RouteBar bar) {

    public Standing {
        causes = List.copyOf(causes);
    }

    public static Standing of(Situation here, List<Cause> causes, RouteBar bar) {
        return new Standing(
                here.order(),
                here.state(),
                here.since(),
                here.minutes(),
                here.allowedMin(),
                here.record().map(record -> record.settledCount()).orElse(0),
                here.record().map(record -> record.items().size()).orElse(0),
                here.calls().size(),
                causes,
                bar);
    }

    public String time() {
        return Formats.duration(Duration.ofMinutes(minutes));
    }

    /** Whole minutes of the takt. */
    public long takt() {
        return Math.round(allowedMin);
    }

    /** Shown as a figure in every state. */
    public boolean late() {
        return minutes > allowedMin;
    }

    /** How far over the takt. */
    public String over() {
        return Formats.duration(Duration.ofMinutes(minutes - (long) allowedMin));
    }
}

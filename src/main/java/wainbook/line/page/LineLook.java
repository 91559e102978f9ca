package wainbook.line.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.line.OnTheLine;
import wainbook.line.Standing;
import wainbook.line.cause.Causes;
import wainbook.line.forecast.Gains;
import wainbook.line.station.Situation;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.hold.StandingHolds;
import wainbook.order.page.OrderBar;
import wainbook.page.Formats;
import wainbook.page.RouteBar;
import wainbook.process.Releases;
import wainbook.station.DeferredWork;
import wainbook.station.work.Workplace;
import wainbook.works.shift.WorksDay;

/** The line at one moment, read from the record. */
@ApplicationScoped
public class LineLook {

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final OrderBar bar;
    private final StandingHolds holds;
    private final WorksDay day;
    private final Gains gains;

    LineLook(
            Ledger ledger,
            Releases releases,
            Workplace workplace,
            OrderBar bar,
            StandingHolds holds,
            WorksDay day,
            Gains gains) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bar = bar;
        this.holds = holds;
        this.day = day;
        this.gains = gains;
    }

    /** The whole of it. Many stations ask for the same streams, so that it is drawn in one go. */
    public LineNow at(Instant now) {
        return ledger.drawing(
                () -> new LineDrawing(onTheLine(now), ledger, releases, day, now, matters -> gains.sofar(now, matters))
                        .drawn(this::standing));
    }

    /** Where one vehicle stands and why; empty unless it is on the line or being surveyed. */
    public Optional<Standing> of(History history, WorkOrder order, Instant now) {
        if (order.phase() != Phase.ON_LINE && order.phase() != Phase.DONOR_RECEIVED) {
            return Optional.empty();
        }
        return Optional.of(ledger.drawing(() -> {
            OnTheLine line = onTheLine(now);
            return standing(line, line.situation(history, order));
        }));
    }

    public RouteBar bar(History history, WorkOrder order, Instant now) {
        return bar.of(order, now, DeferredWork.from(history));
    }

    private OnTheLine onTheLine(Instant now) {
        return new OnTheLine(ledger, releases, workplace, bar, holds, day.shifts()::at, now);
    }

    private Standing standing(OnTheLine line, Situation here) {
        Causes causes = line.causes(new Formats(day.zone()));
        return Standing.of(here, causes.of(here), bar(here.history(), here.order(), line.now()));
    }
}

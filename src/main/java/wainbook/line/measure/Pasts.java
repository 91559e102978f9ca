package wainbook.line.measure;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.status.Signs;
import wainbook.gate.passage.Passage;
import wainbook.gate.past.VehicleWay;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.OnTheLine;
import wainbook.line.station.Layout;
import wainbook.line.station.Situation;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.StandingHolds;
import wainbook.order.page.OrderBar;
import wainbook.process.Releases;
import wainbook.process.Station;
import wainbook.safety.stop.Stops;
import wainbook.station.work.Workplace;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Reads from the record what was on the line in a period. What was handed over is read once. */
@ApplicationScoped
public class Pasts {

    private static final int REMEMBERED = 2000;

    /** With other shifts or another takt a vehicle is read again. */
    private record Key(String order, Shifts shifts, Optional<Integer> takt) {}

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final OrderBar bar;
    private final StandingHolds holds;
    private final WorksDay day;
    private final Cache<Key, Gathered> handedOver =
            Caffeine.newBuilder().maximumSize(REMEMBERED).build();

    Pasts(Ledger ledger, Releases releases, Workplace workplace, OrderBar bar, StandingHolds holds, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bar = bar;
        this.holds = holds;
        this.day = day;
    }

    /** @param vehicleKind empty for all */
    public Measures of(Period period, String vehicleKind, Instant now) {
        return ledger.drawing(() -> Measures.of(past(period, now), vehicleKind));
    }

    /** Kinds of vehicles that a route takes or that were ever ordered. */
    public List<String> vehicleKinds() {
        return releases.routes().stream()
                .map(route -> route.vehicleKind())
                .distinct()
                .sorted()
                .toList();
    }

    private LinePast past(Period period, Instant now) {
        Shifts shifts = day.shifts();
        Layout layout = Layout.of(releases);
        var line = new OnTheLine(ledger, releases, workplace, bar, holds, shifts::at, now);
        return new LinePast(
                period,
                layout,
                shifts::at,
                shifts.at(layout.stations().stream().map(Station::code).toList()),
                day.taktMinutes(),
                WorkOrderRow.onLineBetween(period.begin(), period.end()).stream()
                        .map(row -> gathered(row, shifts, line))
                        .flatMap(Optional::stream)
                        .toList(),
                Stops.of(ledger.history(Subject.works())).all());
    }

    private Optional<Gathered> gathered(WorkOrderRow row, Shifts shifts, OnTheLine line) {
        if (row.phase == Phase.HANDED_OVER) {
            return Optional.ofNullable(handedOver.get(
                    new Key(row.number, shifts, day.taktMinutes()),
                    key -> read(row, shifts).orElse(null)));
        }
        Optional<Instant> done =
                Optional.ofNullable(row.occupies).flatMap(line::at).flatMap(Pasts::doneSince);
        return read(row, shifts).map(one -> new Gathered(one.way(), one.passages(), one.taktMin(), done));
    }

    private Optional<Gathered> read(WorkOrderRow row, Shifts shifts) {
        History history = ledger.history(Subject.workOrder(row.number));
        Optional<WorkOrder> order = WorkOrder.of(history);
        return VehicleWay.of(history)
                .map(way -> new Gathered(
                        way,
                        Passage.of(history, way, shifts::workingMinutes),
                        order.map(bar::taktMin).orElse(1.0),
                        Optional.empty()));
    }

    private static Optional<Instant> doneSince(Situation here) {
        Signs signs = here.signs();
        return signs.done() && !signs.signed()
                ? here.lastEvidence().or(() -> here.order().since())
                : Optional.empty();
    }
}

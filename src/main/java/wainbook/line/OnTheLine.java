package wainbook.line;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import wainbook.engineering.flow.status.Doing;
import wainbook.engineering.flow.status.Signs;
import wainbook.engineering.flow.status.Walk;
import wainbook.gate.Gate;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.cause.Causes;
import wainbook.line.cause.Waits;
import wainbook.line.station.Layout;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.HoldInWords;
import wainbook.order.hold.StandingHolds;
import wainbook.order.page.OrderBar;
import wainbook.page.Formats;
import wainbook.process.Releases;
import wainbook.process.Station;
import wainbook.safety.stop.Stop;
import wainbook.safety.stop.Stops;
import wainbook.station.help.HelpCall;
import wainbook.station.work.Workplace;
import wainbook.works.shift.Shifts;

/** The vehicles on the line as one drawing sees them; each is folded once, when it is asked for. */
public final class OnTheLine {

    private final Ledger ledger;
    private final Workplace workplace;
    private final OrderBar bar;
    private final StandingHolds holds;
    private final Function<String, Shifts> hours;
    private final Instant now;
    private final Map<String, String> occupants;
    private final Layout layout;
    private final Map<String, String> titles;
    private final Map<String, Optional<Situation>> seen = new HashMap<>();

    /** @param hours the shifts of a station, by its code */
    public OnTheLine(
            Ledger ledger,
            Releases releases,
            Workplace workplace,
            OrderBar bar,
            StandingHolds holds,
            Function<String, Shifts> hours,
            Instant now) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.bar = bar;
        this.holds = holds;
        this.hours = hours;
        this.now = now;
        this.occupants = WorkOrderRow.inPhase(Phase.ON_LINE).stream()
                .filter(row -> row.occupies != null)
                .collect(Collectors.toMap(row -> row.occupies, row -> row.number));
        this.layout = Layout.of(releases);
        this.titles = releases.stations().stream().collect(Collectors.toMap(Station::code, Station::title));
    }

    public Instant now() {
        return now;
    }

    /** The vehicle at a station. */
    public Optional<Situation> at(String station) {
        return seen.computeIfAbsent(
                station,
                code -> Optional.ofNullable(occupants.get(code))
                        .flatMap(order -> situation(ledger.history(Subject.workOrder(order)))));
    }

    private Optional<Situation> situation(History history) {
        return WorkOrder.of(history).map(order -> situation(history, order));
    }

    public Situation situation(History history, WorkOrder order) {
        return new Situation(
                history,
                order,
                order.stage()
                        .flatMap(stage -> workplace.record(history, order, stage))
                        .map(record -> Gate.of(history, record)),
                Nonconformities.of(history).awaitingDisposition(),
                HoldInWords.inForce(history),
                holds.on(order),
                HelpCall.open(history),
                bar.elapsedMin(order, now),
                bar.allowedMin(order));
    }

    public Causes causes(Formats formats) {
        return new Causes(this::waitsFor, this::at, this::title, new Causes.Clock(formats, now));
    }

    String title(String station) {
        return titles.getOrDefault(station, station);
    }

    /** Whether the hours of a station run. */
    public boolean working(String station) {
        return hours.apply(station).working(now);
    }

    /** What a station would be doing if its shift ran. */
    public StationState whenWorking(String station) {
        return StationState.of(signs(station).doing());
    }

    private Signs signs(String station) {
        return at(station)
                .map(Situation::signs)
                .orElseGet(() -> Signs.empty(true, !stops(station).isEmpty()));
    }

    /** Safety stops of an empty station; where a vehicle stands it is the vehicle that is held. */
    public List<Stop> stops(String station) {
        return Stops.of(ledger.history(Subject.works())).at(station);
    }

    /**
     * The station that a station waits for in the end; empty where it does not wait, could move its vehicle on, or nothing comes. One
     * whose own shift does not run is looked at as if all shifts ran.
     */
    public Optional<Waits> waitsFor(String station) {
        int index = layout.index(station);
        if (index < 0) {
            return Optional.empty();
        }
        Predicate<String> runs = working(station) ? this::working : any -> true;
        return Walk.cause(at -> post(at, runs), index).stream()
                .filter(at -> at != Walk.RELEASE && at != index)
                .mapToObj(layout::code)
                .map(code -> new Waits(code, runs.test(code) ? whenWorking(code) : StationState.OFF_SHIFT))
                .findFirst();
    }

    private Walk.Post post(int index, Predicate<String> runs) {
        String station = layout.code(index);
        Optional<Situation> here = at(station);
        return new Walk.Post(
                runs.test(station) ? signs(station).doing() : Doing.OFF_SHIFT,
                here.isPresent(),
                here.stream()
                        .flatMap(known -> known.order().stage().flatMap(known.order()::stageAfter).stream())
                        .flatMap(stage -> layout.of(stage).stream())
                        .toList(),
                layout.before().get(index));
    }
}

package wainbook.line;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.gate.Gate;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.cause.Causes;
import wainbook.line.cause.Chain;
import wainbook.line.cause.Chain.Post;
import wainbook.line.station.Signs;
import wainbook.line.station.Situation;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.HoldInWords;
import wainbook.order.page.OrderBar;
import wainbook.page.Formats;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Station;
import wainbook.station.help.HelpCall;
import wainbook.station.work.Workplace;

/** The vehicles on the line as one drawing sees them; each is folded once, when it is asked for. */
public final class OnTheLine {

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final OrderBar bar;
    private final Instant now;
    private final Map<String, String> occupants;
    private final List<Route> routes;
    private final Map<String, Station> stations;
    private final Map<String, Optional<Situation>> seen = new HashMap<>();

    public OnTheLine(Ledger ledger, Releases releases, Workplace workplace, OrderBar bar, Instant now) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bar = bar;
        this.now = now;
        this.occupants = WorkOrderRow.inPhase(Phase.ON_LINE).stream()
                .filter(row -> row.occupies != null)
                .collect(Collectors.toMap(row -> row.occupies, row -> row.number));
        this.routes = releases.routes();
        this.stations = releases.stations().stream().collect(Collectors.toMap(Station::code, Function.identity()));
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
                HelpCall.open(history),
                bar.elapsedMin(order, now),
                bar.allowedMin(order));
    }

    public Chain chain() {
        return new Chain(this::post);
    }

    public Causes causes(Formats formats) {
        return new Causes(chain(), this::at, this::title, new Causes.Clock(formats, now));
    }

    String title(String station) {
        return Optional.ofNullable(stations.get(station)).map(Station::title).orElse(station);
    }

    private Post post(String station) {
        Optional<Situation> here = at(station);
        return new Post(
                station,
                here.map(Situation::state).orElse(Signs.empty().state()),
                here.isPresent(),
                here.stream()
                        .flatMap(known -> known.order().stage().flatMap(known.order()::stageAfter).stream())
                        .flatMap(this::stationsOf)
                        .toList(),
                stage(station).stream()
                        .flatMap(this::stagesBefore)
                        .flatMap(this::stationsOf)
                        .toList());
    }

    private Optional<String> stage(String station) {
        return Optional.ofNullable(stations.get(station)).flatMap(Station::stage);
    }

    private Stream<String> stagesBefore(String stage) {
        return routes.stream()
                .flatMap(route -> {
                    List<String> stages =
                            route.legs().stream().map(Route.Leg::stage).toList();
                    int index = stages.indexOf(stage);
                    return index > 0 ? Stream.of(stages.get(index - 1)) : Stream.empty();
                })
                .distinct();
    }

    private Stream<String> stationsOf(String stage) {
        return releases.stationsOf(stage).stream().map(Station::code);
    }
}

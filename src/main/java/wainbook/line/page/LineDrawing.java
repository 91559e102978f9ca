package wainbook.line.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.OnTheLine;
import wainbook.line.Standing;
import wainbook.line.cause.Cause;
import wainbook.line.cause.Causes;
import wainbook.line.cause.FirstThings;
import wainbook.line.cause.Waits;
import wainbook.line.forecast.state.SetOrder;
import wainbook.line.station.Situation;
import wainbook.line.station.StationState;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Draws the line page's view, from the end of the line to its start, since causes flow upstream. */
record LineDrawing(
        OnTheLine line, Ledger ledger, Releases releases, WorksDay day, Instant now, FirstThings.Worth worth) {

    private static final List<Phase> YARD = List.of(Phase.DONOR_RECEIVED, Phase.DONOR_ACCEPTED, Phase.FINISHED);

    LineNow drawn(BiFunction<OnTheLine, Situation, Standing> standing) {
        Shifts shifts = day.shifts();
        Causes causes = line.causes(new Formats(day.zone()));
        List<LineNow.Yard> yard = yard();
        var rows = new ArrayList<LineNow.Row>();
        var here = new ArrayList<Situation>();
        Map<String, Long> waiting = new HashMap<>();
        for (Stage stage : stages()) {
            for (Station station : releases.stationsOf(stage.code())) {
                Optional<Situation> found = line.at(station.code());
                found.ifPresent(here::add);
                Optional<String> waitsFor = line.waitsFor(station.code()).map(Waits::station);
                waitsFor.ifPresent(cause -> waiting.merge(cause, 1L, Long::sum));
                rows.add(new LineNow.Row(
                        stage,
                        station,
                        line.working(station.code()),
                        line.whenWorking(station.code()),
                        found.map(known -> standing.apply(line, known)),
                        waitsFor,
                        found.isPresent() ? List.of() : empty(station, causes, nothingComes(stage, yard))));
            }
        }
        here.stream()
                .filter(known -> known.state() == StationState.BLOCKED)
                .filter(known -> line.waitsFor(known.station()).isEmpty())
                .forEach(known -> waiting.putIfAbsent(known.station(), 0L));
        List<LineNow.Off> bays = bays();
        long off = bays.size()
                + yard.stream().mapToLong(group -> group.rows().size()).sum();
        List<String> stations = rows.stream().map(row -> row.station().code()).toList();
        return new LineNow(
                head(shifts.at(stations), here.size() + off), rows, FirstThings.of(here, waiting, worth), bays, yard);
    }

    /** Why nothing stands at a station: work may be stopped there before it is asked what comes next. */
    private List<Cause> empty(Station station, Causes causes, Cause none) {
        Stream<Cause> stopped = line.stops(station.code()).stream()
                .map(stop -> Cause.at(stop.path(), Words.of("line.causeStopped", stop.number())));
        return Stream.concat(stopped, Stream.of(causes.starved(station.code(), none)))
                .toList();
    }

    private List<Stage> stages() {
        Set<String> onLine = releases.routes().stream()
                .flatMap(route -> route.legs().stream())
                .map(Route.Leg::stage)
                .collect(Collectors.toSet());
        return releases.stages().stream()
                .filter(stage -> onLine.contains(stage.code()))
                .sorted(Comparator.comparingInt(Stage::number).reversed())
                .toList();
    }

    private LineNow.Head head(Shifts shifts, long inWorks) {
        Instant today = day.beginOfDay(now);
        List<WorkOrderRow> handedOver = WorkOrderRow.inPhaseSince(Phase.HANDED_OVER, today);
        long made = Stream.concat(WorkOrderRow.inPhaseSince(Phase.FINISHED, today).stream(), handedOver.stream())
                .filter(row -> leftTheLineSince(row, today))
                .count();
        return new LineNow.Head(
                now,
                !shifts.shifts().isEmpty(),
                shifts.running(now),
                shifts.nextBegin(now),
                day.taktMinutes(),
                made,
                handedOver.size(),
                inWorks);
    }

    private boolean leftTheLineSince(WorkOrderRow row, Instant today) {
        return moves(row, Direction.OUT)
                .reduce((former, latter) -> latter)
                .filter(entry -> !entry.moment().at().isBefore(today))
                .isPresent();
    }

    /** Where nothing is on the line before this station: what waits in the yard. */
    private Cause nothingComes(Stage stage, List<LineNow.Yard> yard) {
        boolean first = releases.routes().stream()
                .anyMatch(route -> route.first().stage().equals(stage.code()));
        List<WorkOrderRow> waiting = yard.stream()
                .filter(group -> group.phase() == Phase.DONOR_ACCEPTED)
                .flatMap(group -> group.rows().stream())
                .toList();
        if (waiting.isEmpty()) {
            return Cause.at("/orders?phase=DONOR_RECEIVED", Words.of("line.starvedNoDonor"));
        }
        String order = waiting.get(0).number;
        return first
                ? Cause.at("/orders/" + order + "/move", Words.of("line.starvedDonorWaits", waiting.size(), order))
                : Cause.at("/orders/" + order, Words.of("line.starvedNothing"));
    }

    private List<LineNow.Off> bays() {
        return WorkOrderRow.inPhase(Phase.OFF_LINE).stream()
                .map(row -> new LineNow.Off(
                        row,
                        moves(row, Direction.OFF_LINE)
                                .reduce((former, latter) -> latter)
                                .flatMap(entry -> ((Moved) entry.saying()).reason())))
                .toList();
    }

    /** Those that wait in the order that is set, if one is. */
    private List<LineNow.Yard> yard() {
        Optional<SetOrder> set = SetOrder.at(SetOrder.all(ledger.history(Subject.works())), Instant.MAX);
        return YARD.stream()
                .map(phase -> new LineNow.Yard(
                        phase,
                        WorkOrderRow.inPhase(phase).stream()
                                .sorted(Comparator.comparing(row -> set.map(order -> order.place(row.number))
                                        .orElse(0)))
                                .toList()))
                .filter(group -> !group.rows().isEmpty())
                .toList();
    }

    private Stream<Entry> moves(WorkOrderRow row, Direction direction) {
        return ledger.history(Subject.workOrder(row.number))
                .saying(Moved.class)
                .filter(entry -> ((Moved) entry.saying()).direction() == direction);
    }
}

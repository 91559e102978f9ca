package wainbook.line;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.gate.Gate;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.Situation.Ahead;
import wainbook.matter.Nonconformities;
import wainbook.order.OrderBar;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.RouteBar;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.station.DeferredWork;
import wainbook.station.Workplace;

/** The whole line at one moment, read from the record. */
@ApplicationScoped
public class LineLook {

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final OrderBar bar;

    LineLook(Ledger ledger, Releases releases, Workplace workplace, OrderBar bar) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bar = bar;
    }

    /** From the end of the line to its start, since causes flow upstream. */
    public LineNow at(Instant now) {
        var stages = new ArrayList<>(releases.stages());
        Set<String> onLine = releases.routes().stream()
                .flatMap(route -> route.legs().stream())
                .map(leg -> leg.stage())
                .collect(Collectors.toSet());
        stages.sort(Comparator.comparingInt(Stage::number).reversed());
        var rows = new ArrayList<LineNow.Row>();
        for (Stage stage : stages) {
            if (onLine.contains(stage.code())) {
                releases.stationsOf(stage.code()).forEach(station -> rows.add(row(stage, station, now)));
            }
        }
        return new LineNow(now, rows, offTheLine(now));
    }

    /** Where one vehicle stands and why; empty unless it is on the line or being surveyed. */
    public Optional<Standing> of(History history, WorkOrder order, Instant now) {
        if (order.phase() != Phase.ON_LINE && order.phase() != Phase.DONOR_RECEIVED) {
            return Optional.empty();
        }
        long minutes = order.since()
                .map(since -> Math.max(0, Duration.between(since, now).toMinutes()))
                .orElse(0L);
        Situation situation = new Situation(
                order,
                order.stage()
                        .flatMap(stage -> workplace.record(history, order, stage))
                        .map(record -> Gate.of(history, record)),
                Nonconformities.of(history).awaitingDisposition(),
                minutes,
                bar.taktMin(order),
                ahead(order));
        return Optional.of(new Standing(
                order, situation.state(), minutes, bar.taktMin(order), situation.causes(), bar(history, order, now)));
    }

    public RouteBar bar(History history, WorkOrder order, Instant now) {
        return bar.of(order, now, DeferredWork.from(history));
    }

    private LineNow.Row row(Stage stage, Station station, Instant now) {
        Optional<Standing> standing = WorkOrderRow.occupant(station.code()).flatMap(row -> standing(row, now));
        return new LineNow.Row(stage, station, standing, standing.isPresent() ? List.of() : List.of(starved(stage)));
    }

    private Optional<Standing> standing(WorkOrderRow row, Instant now) {
        History history = ledger.history(Subject.workOrder(row.number));
        return WorkOrder.of(history).flatMap(order -> of(history, order, now));
    }

    /** Why nothing comes: from the station before, or from the yard where there is none before. */
    private Cause starved(Stage stage) {
        boolean first = releases.routes().stream()
                .anyMatch(route -> route.first().stage().equals(stage.code()));
        if (first) {
            List<WorkOrderRow> waiting = WorkOrderRow.inPhase(Phase.DONOR_ACCEPTED);
            return waiting.isEmpty()
                    ? Cause.at("/orders?phase=DONOR_RECEIVED", Words.of("line.starvedNoDonor"))
                    : Cause.at(
                            "/orders/" + waiting.get(0).number + "/move",
                            Words.of("line.starvedDonorWaits", waiting.size(), waiting.get(0).number));
        }
        return releases.routes().stream()
                .flatMap(route ->
                        before(route.legs().stream().map(leg -> leg.stage()).toList(), stage.code()).stream())
                .findFirst()
                .flatMap(releases::stage)
                .map(before -> feeder(before))
                .orElseGet(() -> Cause.of(Words.of("line.starvedNothing")));
    }

    private Cause feeder(Stage before) {
        return releases.stationsOf(before.code()).stream()
                .flatMap(station -> WorkOrderRow.occupant(station.code()).stream())
                .findFirst()
                .map(row ->
                        Cause.at("/orders/" + row.number, Words.of("line.starvedWaits", row.number, before.title())))
                .orElseGet(() -> Cause.of(Words.of("line.starvedEmpty", before.title())));
    }

    private static Optional<String> before(List<String> stages, String stage) {
        int index = stages.indexOf(stage);
        return index > 0 ? Optional.of(stages.get(index - 1)) : Optional.empty();
    }

    /** The station ahead when every station of the next stage is taken. */
    private Optional<Ahead> ahead(WorkOrder order) {
        List<Station> next = order.stage()
                .flatMap(order::stageAfter)
                .map(releases::stationsOf)
                .orElse(List.of());
        List<Ahead> taken = next.stream()
                .flatMap(station ->
                        WorkOrderRow.occupant(station.code())
                                .map(row -> new Ahead(station.code(), row.number))
                                .stream())
                .toList();
        return !next.isEmpty() && taken.size() == next.size() ? Optional.of(taken.get(0)) : Optional.empty();
    }

    private List<LineNow.Off> offTheLine(Instant now) {
        var off = new ArrayList<LineNow.Off>();
        for (Phase phase : List.of(Phase.OFF_LINE, Phase.DONOR_RECEIVED, Phase.DONOR_ACCEPTED, Phase.FINISHED)) {
            WorkOrderRow.inPhase(phase).forEach(row -> off.add(LineNow.Off.of(row, now)));
        }
        return off;
    }
}

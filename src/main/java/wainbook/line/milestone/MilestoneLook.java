package wainbook.line.milestone;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.flow.forecast.outcome.StageTimes;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.LineForecast;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;

/** Brings together which milestones were reached and when the others are expected. */
@ApplicationScoped
public class MilestoneLook {

    /**
     * One milestone of one order.
     *
     * @param expected by the forecast of the line, half of its draws being sooner; absent where it says nothing of it
     * @param promisedOn the day that the operator was promised, for the handover alone
     */
    public record Passing(
            Milestone milestone,
            Optional<MilestoneRow> reached,
            Optional<Instant> expected,
            Optional<LocalDate> promisedOn) {}

    /** One order with all of them. */
    public record Way(WorkOrderRow order, List<Passing> passings) {}

    private final Ledger ledger;
    private final Releases releases;
    private final Forecasts forecasts;

    MilestoneLook(Ledger ledger, Releases releases, Forecasts forecasts) {
        this.ledger = ledger;
        this.releases = releases;
        this.forecasts = forecasts;
    }

    public List<Way> of(List<WorkOrderRow> orders, Instant now) {
        Map<String, List<MilestoneRow>> reached =
                MilestoneRow.of(orders.stream().map(row -> row.number).toList()).stream()
                        .collect(Collectors.groupingBy(row -> row.workOrder));
        Map<String, Map<Milestone, Instant>> expected =
                orders.stream().allMatch(MilestoneLook::ended) ? Map.of() : expected(now);
        return orders.stream()
                .map(row -> new Way(
                        row,
                        Arrays.stream(Milestone.values())
                                .map(milestone -> passing(
                                        row,
                                        milestone,
                                        reached.getOrDefault(row.number, List.of()),
                                        expected.getOrDefault(row.number, Map.of())))
                                .toList()))
                .toList();
    }

    private static boolean ended(WorkOrderRow row) {
        return row.phase == WorkOrder.Phase.HANDED_OVER || row.phase == WorkOrder.Phase.DONOR_REJECTED;
    }

    private static Passing passing(
            WorkOrderRow row, Milestone milestone, List<MilestoneRow> reached, Map<Milestone, Instant> expected) {
        Optional<MilestoneRow> there =
                reached.stream().filter(one -> one.milestone == milestone).findFirst();
        return new Passing(
                milestone,
                there,
                there.isPresent() ? Optional.empty() : Optional.ofNullable(expected.get(milestone)),
                milestone == Milestone.HANDED_OVER ? Optional.of(row.promisedOn) : Optional.empty());
    }

    /** What the forecast can say: the end of the stage that reaches a milestone, and of everything before the handover. */
    private Map<String, Map<Milestone, Instant>> expected(Instant now) {
        LineForecast forecast = forecasts.at(now);
        Map<String, Map<String, Milestone>> byRoute = new HashMap<>();
        Map<String, Map<Milestone, Instant>> expected = new HashMap<>();
        for (LineForecast.Of one : forecast.vehicles()) {
            String order = one.vehicle().order();
            Optional<WorkOrder> known = WorkOrder.of(ledger.history(Subject.workOrder(order)));
            Map<String, Milestone> stages = byRoute.computeIfAbsent(
                    known.map(its -> its.ordered().route()).orElse(""), this::stages);
            boolean back = known.filter(its -> its.links().from().isPresent()).isPresent();
            Map<Milestone, Instant> of = new EnumMap<>(Milestone.class);
            for (StageTimes times : one.outlook().stages()) {
                String stage = forecast.line().posts().get(times.stage()).stage();
                Optional.ofNullable(stages.get(stage))
                        .filter(milestone -> !back || milestone != Milestone.STRIPPED)
                        .ifPresent(milestone -> forecast.line()
                                .calendar()
                                .notAfter(times.outOf().median())
                                .ifPresent(at -> of.put(milestone, at)));
            }
            forecast.line()
                    .calendar()
                    .notAfter(one.outlook().finish().median())
                    .ifPresent(at -> of.put(Milestone.HANDED_OVER, at));
            expected.put(order, of);
        }
        return expected;
    }

    /** The first stage, and the one whose sheet has live work that takes two. */
    private Map<String, Milestone> stages(String route) {
        Map<String, Milestone> stages = new HashMap<>();
        List<Route.Leg> legs = releases.route(route).map(Route::legs).orElse(List.of());
        for (Route.Leg leg : legs) {
            if (releases.sheetInForce(leg.checkSheet())
                    .map(Released::sheet)
                    .filter(MilestoneLook::energises)
                    .isPresent()) {
                stages.putIfAbsent(leg.stage(), Milestone.ENERGISED);
            }
        }
        legs.stream().findFirst().ifPresent(leg -> stages.put(leg.stage(), Milestone.STRIPPED));
        return stages;
    }

    private static boolean energises(CheckSheet sheet) {
        return sheet.items().stream()
                .anyMatch(item -> item.asks() instanceof Ask.Attended && item.condition() == Condition.LIVE);
    }
}

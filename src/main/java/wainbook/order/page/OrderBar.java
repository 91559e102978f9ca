package wainbook.order.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder;
import wainbook.page.RouteBar;
import wainbook.page.RouteBar.Cell;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.sheet.CheckSheet;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/**
 * The route bar of a work order, in working minutes of the works' shifts. Where the works has set no takt, a takt is the
 * planned work of the route's longest stage: the line cannot go faster (common practice, no source). There is no plan of
 * days yet, so no lateness.
 */
@ApplicationScoped
public class OrderBar {

    private final Releases releases;
    private final WorksDay day;

    OrderBar(Releases releases, WorksDay day) {
        this.releases = releases;
        this.day = day;
    }

    /** @param carriesOver the stages that work was carried over from */
    public RouteBar of(WorkOrder order, Instant now, Set<String> carriesOver) {
        List<String> stages = order.ordered().stages();
        int present = order.stage().map(stages::indexOf).orElse(-1);
        boolean through = order.phase() == WorkOrder.Phase.FINISHED || order.phase() == WorkOrder.Phase.HANDED_OVER;
        var cells = new ArrayList<Cell>();
        for (int i = 0; i < stages.size(); i++) {
            String code = stages.get(i);
            Optional<Stage> stage = releases.stage(code);
            String mark = stage.map(known -> String.valueOf(known.number())).orElse(code);
            String name = stage.map(Stage::title).orElse(code);
            double planned = plannedMin(order, code);
            Cell cell = through || i < present
                    ? Cell.signed(mark, name, planned)
                    : i == present
                            ? Cell.now(mark, name, planned, elapsedMin(order, now) / planned)
                            : Cell.blank(mark, name, planned);
            cell = i == present && !order.holds().isEmpty() ? cell.onHold() : cell;
            cells.add(carriesOver.contains(code) ? cell.carriesOver() : cell);
        }
        return new RouteBar(cells, taktMin(order), Optional.empty());
    }

    /** Working minutes that a vehicle may stay at its stage: a takt for each station that the stage has. */
    public double allowedMin(WorkOrder order) {
        int stations = order.stage().map(releases::stationsOf).map(List::size).orElse(1);
        return taktMin(order) * Math.max(1, stations);
    }

    /** Minutes of one takt: the works', or that of this order's route. */
    public double taktMin(WorkOrder order) {
        return day.taktMinutes()
                .map(Integer::doubleValue)
                .orElseGet(() -> order.ordered().stages().stream()
                        .mapToDouble(stage -> plannedMin(order, stage))
                        .max()
                        .orElse(1));
    }

    /** Working minutes, of the shifts that work there, since the vehicle came to where it is. */
    public long elapsedMin(WorkOrder order, Instant now) {
        Shifts shifts = order.at().map(at -> day.shifts().at(at.place())).orElseGet(day::shifts);
        return order.since().map(since -> shifts.workingMinutes(since, now)).orElse(0L);
    }

    private double plannedMin(WorkOrder order, String stage) {
        Optional<CheckSheet> bound =
                Optional.ofNullable(order.bindings().get(stage)).map(this::sheet);
        return Math.max(
                1,
                bound.or(() -> released(order, stage))
                        .map(CheckSheet::plannedMinutes)
                        .orElse(1));
    }

    private CheckSheet sheet(Binding binding) {
        return releases.sheet(binding.sheet(), binding.revision());
    }

    private Optional<CheckSheet> released(WorkOrder order, String stage) {
        return releases.leg(order.ordered().route(), stage)
                .map(Route.Leg::checkSheet)
                .flatMap(releases::sheetInForce)
                .map(Released::sheet);
    }
}

package wainbook.line.forecast;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.Subject.Sort;
import wainbook.line.OnTheLine;
import wainbook.line.forecast.Away.WorkingMinutes;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.page.OrderBar;
import wainbook.process.Releases;
import wainbook.station.work.Workplace;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** The forecast of the works. It is made again when the record has grown or a minute has passed, and only when it is asked for. */
@ApplicationScoped
public class Forecasts {

    /** Vehicles handed over last, whose times count: older ones were built by older ways. Our choice. */
    private static final int REMEMBERED = 200;

    private static final Duration FRESH = Duration.ofMinutes(1);

    /** A vehicle that is handed over has no stay to come; with other shifts its minutes are counted anew. */
    private record PastKey(String order, Shifts shifts) {}

    private record Kept(List<Long> lengths, LineForecast forecast) {}

    private final Ledger ledger;
    private final Releases releases;
    private final Workplace workplace;
    private final OrderBar bar;
    private final WorksDay day;
    private final Cache<PastKey, VehiclePast> pasts =
            Caffeine.newBuilder().maximumSize(2 * REMEMBERED).build();

    private Optional<Kept> kept = Optional.empty();

    Forecasts(Ledger ledger, Releases releases, Workplace workplace, OrderBar bar, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.workplace = workplace;
        this.bar = bar;
        this.day = day;
    }

    /** One at a time: whoever asks meanwhile waits for the same one. */
    public synchronized LineForecast at(Instant now) {
        List<Long> lengths = Stream.of(Sort.WORK_ORDER, Sort.WORKS, Sort.CHECK_SHEET)
                .map(ledger::length)
                .toList();
        Optional<Kept> still = kept.filter(one -> one.lengths().equals(lengths))
                .filter(one -> Duration.between(one.forecast().line().calendar().now(), now)
                                .abs()
                                .compareTo(FRESH)
                        < 0);
        if (still.isEmpty()) {
            kept = Optional.of(new Kept(lengths, LineForecast.of(ledger.drawing(() -> lineNow(now)))));
        }
        return kept.orElseThrow().forecast();
    }

    private TheLineNow lineNow(Instant now) {
        Shifts shifts = day.shifts();
        var line = new OnTheLine(ledger, releases, workplace, bar, shifts::at, now);
        var muster = new Muster(ledger, releases, line, WorkingMinutes.of(shifts));
        List<OnHand> vehicles = muster.vehicles();
        return new TheLineNow(new Calendar(shifts, now), past(shifts), muster.posts(vehicles), vehicles);
    }

    private PastTimes past(Shifts shifts) {
        var all = new ArrayList<VehiclePast>();
        List<WorkOrderRow> handedOver = WorkOrderRow.inPhase(Phase.HANDED_OVER);
        handedOver.stream()
                .skip(Math.max(0, handedOver.size() - REMEMBERED))
                .map(row -> pasts.get(new PastKey(row.number, shifts), key -> read(row, shifts)))
                .forEach(all::add);
        Stream.of(Phase.FINISHED, Phase.ON_LINE, Phase.OFF_LINE)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .map(row -> read(row, shifts))
                .forEach(all::add);
        return new PastTimes(all);
    }

    private VehiclePast read(WorkOrderRow row, Shifts shifts) {
        return VehiclePast.of(
                ledger.history(Subject.workOrder(row.number)), WorkingMinutes.of(shifts), this::plannedMinutes);
    }

    private int plannedMinutes(Binding bound) {
        return releases.sheet(bound.sheet(), bound.revision()).plannedMinutes();
    }
}

package wainbook.line.forecast;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.Subject.Sort;
import wainbook.line.forecast.past.Away.WorkingMinutes;
import wainbook.line.forecast.past.Cures;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.line.forecast.state.AsOf;
import wainbook.line.forecast.state.ProcessToday;
import wainbook.line.forecast.state.SetOrder;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.process.Releases;
import wainbook.works.appointment.AppointmentKinds;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** The forecast of the works. It is made again when the record has grown or a minute has passed, and only when it is asked for. */
@ApplicationScoped
public class Forecasts {

    /** Vehicles handed over last, whose times count: older ones were built by older ways. Our choice. */
    private static final int REMEMBERED = 200;

    private static final Duration FRESH = Duration.ofMinutes(1);

    private static final List<Phase> OTHERS = List.of(
            Phase.FINISHED, Phase.ON_LINE, Phase.OFF_LINE, Phase.DONOR_ACCEPTED, Phase.DONOR_RECEIVED, Phase.ORDERED);

    /** With other shifts minutes are counted anew. */
    private record PastKey(String order, long entries, Shifts shifts) {}

    private record Kept(List<Long> lengths, LineForecast forecast) {}

    private final Ledger ledger;
    private final ProcessToday process;
    private final WorksDay day;
    private final AppointmentKinds appointments;
    private final Cache<PastKey, VehiclePast> pasts =
            Caffeine.newBuilder().maximumSize(2 * REMEMBERED).build();

    private Optional<Kept> kept = Optional.empty();

    Forecasts(Ledger ledger, Releases releases, WorksDay day, AppointmentKinds appointments) {
        this.ledger = ledger;
        this.process = new ProcessToday.Released(releases);
        this.day = day;
        this.appointments = appointments;
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

    /** The line alone, as it stands now. */
    public TheLineNow line(Instant now) {
        return ledger.drawing(() -> lineNow(now));
    }

    private TheLineNow lineNow(Instant now) {
        Shifts shifts = day.shifts();
        Optional<SetOrder> set = SetOrder.at(SetOrder.all(ledger.history(Subject.works())), now);
        return new AsOf(now, shifts, process, appointments.all(), set).line(records(), record -> past(record, shifts));
    }

    /** Of those that can say something: the last handed over, and all that are not. */
    private List<History> records() {
        List<WorkOrderRow> handedOver = WorkOrderRow.inPhase(Phase.HANDED_OVER);
        return Stream.concat(
                        handedOver.stream().skip(Math.max(0, handedOver.size() - REMEMBERED)),
                        OTHERS.stream().flatMap(phase -> WorkOrderRow.inPhase(phase).stream()))
                .map(row -> ledger.history(Subject.workOrder(row.number)))
                .toList();
    }

    private VehiclePast past(History record, Shifts shifts) {
        return pasts.get(
                new PastKey(record.subject().code(), record.number(), shifts),
                key -> VehiclePast.of(record, WorkingMinutes.of(shifts), this::plannedMinutes));
    }

    private int plannedMinutes(Binding bound) {
        return Cures.workMinutes(process.sheet(bound.sheet(), bound.revision()));
    }
}

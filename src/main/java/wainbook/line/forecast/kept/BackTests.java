package wainbook.line.forecast.kept;

import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.logging.Logger;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.Subject.Sort;
import wainbook.line.forecast.past.VehiclePast;
import wainbook.line.forecast.state.ProcessToday;
import wainbook.line.forecast.state.SetOrder;
import wainbook.process.Releases;
import wainbook.works.shift.WorksDay;

/** Back-tests in the background, one at a time; what was found last is kept until the program ends. */
@ApplicationScoped
public class BackTests {

    private static final Logger LOG = Logger.getLogger(BackTests.class);

    /**
     * How far a back-test is.
     *
     * @param done of {@code days}
     * @param said the forecasts of the days done
     */
    public record Progress(Instant begun, int done, int days, boolean ended, boolean failed, List<Prediction> said) {
        public Progress {
            said = List.copyOf(said);
        }
    }

    private final AtomicReference<Optional<Progress>> progress = new AtomicReference<>(Optional.empty());
    private final Ledger ledger;
    private final ProcessToday process;
    private final WorksDay day;
    private volatile boolean stopped;

    BackTests(Ledger ledger, Releases releases, WorksDay day) {
        this.ledger = ledger;
        this.process = new ProcessToday.Released(releases);
        this.day = day;
    }

    void end(@Observes ShutdownEvent event) {
        stopped = true;
    }

    public Optional<Progress> progress() {
        return progress.get();
    }

    /** Begins one over the last so many working days, unless one runs. */
    public boolean begin(Instant now, int days) {
        Optional<Progress> before = progress.get();
        if (before.filter(one -> !one.ended()).isPresent()
                || !progress.compareAndSet(before, Optional.of(new Progress(now, 0, days, false, false, List.of())))) {
            return false;
        }
        var thread = new Thread(() -> run(now, days), "back-test");
        thread.setDaemon(true);
        thread.start();
        return true;
    }

    private void run(Instant now, int wanted) {
        var said = new ArrayList<Prediction>();
        try {
            BackTest test = ledger.drawing(this::test);
            List<LocalDate> days = last(test.days(day.of(now)), wanted);
            Map<String, VehiclePast> known = BackTest.nothingKnown();
            for (int i = 0; i < days.size() && !stopped; i++) {
                LocalDate one = days.get(i);
                said.addAll(ledger.drawing(() -> test.on(one, known)));
                progress.set(Optional.of(
                        new Progress(now, i + 1, days.size(), i + 1 == days.size(), false, List.copyOf(said))));
            }
            if (days.isEmpty()) {
                progress.set(Optional.of(new Progress(now, 0, 0, true, false, List.of())));
            }
        } catch (RuntimeException failed) {
            LOG.error("The back-test failed.", failed);
            progress.set(Optional.of(new Progress(now, 0, wanted, true, true, List.of())));
        }
    }

    private BackTest test() {
        List<History> records =
                ledger.subjects(Sort.WORK_ORDER).stream().map(ledger::history).toList();
        return new BackTest(
                day.shifts(), process, day.taktMinutes(), records, SetOrder.all(ledger.history(Subject.works())));
    }

    private static List<LocalDate> last(List<LocalDate> days, int wanted) {
        return days.subList(Math.max(0, days.size() - wanted), days.size());
    }
}

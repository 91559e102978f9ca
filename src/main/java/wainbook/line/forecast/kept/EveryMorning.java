package wainbook.line.forecast.kept;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/**
 * Keeps the forecast of each working day before anybody works. If the program was off then, it is made up for until the first shift
 * begins; after that the day has no kept forecast, since one made later would know more than the others.
 */
@ApplicationScoped
public class EveryMorning {

    private static final Logger LOG = Logger.getLogger(EveryMorning.class);
    private static final int LOOKS_EVERY_S = 60;
    private static final int WITHOUT_SHIFTS_H = 1;

    private final KeptForecasts kept;
    private final WorksDay day;
    private final Clock clock;
    private final Optional<LocalTime> keepAt;
    private final ScheduledExecutorService looking = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "kept-forecast");
        thread.setDaemon(true);
        return thread;
    });

    private Future<?> ticking;

    EveryMorning(
            KeptForecasts kept,
            WorksDay day,
            Clock clock,
            @ConfigProperty(name = "wainbook.forecast.keep-at") Optional<String> keepAt) {
        this.kept = kept;
        this.day = day;
        this.clock = clock;
        this.keepAt = keepAt.map(LocalTime::parse);
    }

    void begin(@Observes StartupEvent event) {
        if (keepAt.isPresent()) {
            ticking = looking.scheduleWithFixedDelay(this::look, LOOKS_EVERY_S, LOOKS_EVERY_S, TimeUnit.SECONDS);
        }
    }

    void end(@Observes ShutdownEvent event) {
        Optional.ofNullable(ticking).ifPresent(running -> running.cancel(false));
        looking.shutdownNow();
    }

    private void look() {
        try {
            Instant now = clock.instant();
            if (isDue(now, keepAt.orElseThrow(), day.shifts()) && !kept.isKept(day.of(now))) {
                kept.keep(clock);
            }
        } catch (RuntimeException failed) {
            LOG.error("The forecast of this morning was not kept.", failed);
        }
    }

    /** From the time at which it is made until the first shift of the day begins; without shifts for an hour, on any day. */
    static boolean isDue(Instant now, LocalTime keepAt, Shifts shifts) {
        LocalDate today = LocalDate.ofInstant(now, shifts.zone());
        ZonedDateTime from = today.atTime(keepAt).atZone(shifts.zone());
        if (now.isBefore(from.toInstant())) {
            return false;
        }
        Instant midnight = today.atStartOfDay(shifts.zone()).toInstant();
        return shifts.shifts().isEmpty()
                ? now.isBefore(from.plusHours(WITHOUT_SHIFTS_H).toInstant())
                : shifts.nextBegin(midnight.minusSeconds(1))
                        .filter(begin ->
                                LocalDate.ofInstant(begin, shifts.zone()).equals(today))
                        .filter(now::isBefore)
                        .isPresent();
    }
}

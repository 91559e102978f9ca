package wainbook.line.milestone.webhook;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Goes round with deliveries as often as it is set to; not at all where it is not set. */
@ApplicationScoped
public class EveryHalfMinute {

    private static final Logger LOG = Logger.getLogger(EveryHalfMinute.class);

    private final Round round;
    private final Clock clock;
    private final Optional<Integer> everyS;
    private final ScheduledExecutorService going = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "milestone-deliveries");
        thread.setDaemon(true);
        return thread;
    });

    private Future<?> ticking;

    EveryHalfMinute(
            Round round, Clock clock, @ConfigProperty(name = "wainbook.webhooks.every-s") Optional<Integer> everyS) {
        this.round = round;
        this.clock = clock;
        this.everyS = everyS;
    }

    void begin(@Observes StartupEvent event) {
        everyS.ifPresent(
                seconds -> ticking = going.scheduleWithFixedDelay(this::go, seconds, seconds, TimeUnit.SECONDS));
    }

    void end(@Observes ShutdownEvent event) {
        Optional.ofNullable(ticking).ifPresent(running -> running.cancel(false));
        going.shutdownNow();
    }

    private void go() {
        try {
            round.at(clock.instant());
        } catch (RuntimeException failed) {
            LOG.error("Milestones that are due were not told.", failed);
        }
    }
}

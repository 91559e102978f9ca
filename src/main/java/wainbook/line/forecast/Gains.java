package wainbook.line.forecast;

import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jboss.logging.Logger;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.Gain;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.line.cause.Matter;
import wainbook.line.forecast.state.TheLineNow;
import wainbook.page.live.Live;

/**
 * What ending each waiting matter now would do for the line. The page of the line does not wait for it: it is worked out behind, when
 * somebody looks, and what was found last is told until it is a minute old or something new waits.
 */
@ApplicationScoped
public class Gains {

    private static final Logger LOG = Logger.getLogger(Gains.class);
    private static final int REPLICATIONS = 1000;
    private static final Duration FRESH = Duration.ofMinutes(1);
    private static final Duration PAUSE = Duration.ofSeconds(15);

    private record Found(Instant at, Map<Matter, Gain> gains) {
        boolean within(Duration age, Instant now) {
            return Duration.between(at, now).abs().compareTo(age) < 0;
        }
    }

    private final AtomicBoolean running = new AtomicBoolean();
    private final Forecasts forecasts;
    private final Live live;
    private volatile Found found = new Found(Instant.EPOCH, Map.of());
    private volatile boolean stopped;

    Gains(Forecasts forecasts, Live live) {
        this.forecasts = forecasts;
        this.live = live;
    }

    void end(@Observes ShutdownEvent event) {
        stopped = true;
    }

    /** What is known by now. What is not known yet, or is not fresh, is worked out behind. */
    public Map<Matter, Gain> sofar(Instant now, Set<Matter> matters) {
        Found known = found;
        boolean all = known.gains().keySet().containsAll(matters);
        boolean due = all ? !known.within(FRESH, now) : !known.within(PAUSE, now);
        if (due && !matters.isEmpty() && !stopped && running.compareAndSet(false, true)) {
            var thread = new Thread(() -> find(now, matters), "first-things");
            thread.setDaemon(true);
            thread.start();
        }
        return known.gains();
    }

    /** The same at once, for those who wait for it. */
    public Map<Matter, Gain> now(Instant now, Collection<Matter> matters) {
        return of(forecasts.line(now), matters);
    }

    static Map<Matter, Gain> of(TheLineNow now, Collection<Matter> matters) {
        Effort effort = Effort.exactly(LineForecast.SEED, REPLICATIONS);
        Line before = now.line();
        Forecast was = Forecast.of(before, effort);
        Map<Matter, Gain> gains = new LinkedHashMap<>();
        matters.forEach(matter -> Ended.on(now, matter)
                .map(TheLineNow::line)
                .ifPresent(after -> gains.put(matter, Gain.of(before, was, after, Forecast.of(after, effort)))));
        return gains;
    }

    private void find(Instant now, Set<Matter> matters) {
        try {
            found = new Found(now, Map.copyOf(now(now, matters)));
            live.workedOut();
        } catch (RuntimeException failed) {
            if (!stopped) {
                LOG.error("What to do first was not worked out.", failed);
            }
        } finally {
            running.set(false);
        }
    }
}

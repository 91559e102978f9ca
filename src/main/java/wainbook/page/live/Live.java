package wainbook.page.live;

import io.quarkus.arc.All;
import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.subscription.BackPressureStrategy;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import org.jboss.logging.Logger;
import wainbook.ledger.Ledger;
import wainbook.page.Announcement;
import wainbook.page.Pages;

/**
 * Tells parts of pages to whoever looks at them. While anybody does, the length of the ledger is asked for once a second,
 * which works the same on every database and with several processes; each part is drawn once for all that look at it.
 */
@ApplicationScoped
public class Live {

    private static final Logger LOG = Logger.getLogger("wainbook");
    private static final int EVERY_S = 1;
    private static final int BEAT_EVERY = 15;

    private final Ledger ledger;
    private final Clock clock;
    private final Sessions sessions;
    private final List<Announcement> announcements;
    private final Map<String, Part> parts = new ConcurrentHashMap<>();
    private final ScheduledExecutorService drawing = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "live");
        thread.setDaemon(true);
        return thread;
    });
    private final Thread leaving = new Thread(this::leave, "live ends");
    private final AtomicLong worked = new AtomicLong();
    private boolean looking;
    private int looks;

    Live(Ledger ledger, Clock clock, Sessions sessions, @All List<Announcement> announcements) {
        this.ledger = ledger;
        this.clock = clock;
        this.sessions = sessions;
        this.announcements = announcements;
    }

    /**
     * Everything that is told of a part from now on, the whole of it first.
     *
     * @param draw called outside the request, once for all who look at the part of this name
     * @param web the request that asks, whose session must last as long as it listens
     */
    public Multi<OutboundSseEvent> part(String name, Supplier<String> draw, RoutingContext web, Sse sse) {
        Part part = parts.computeIfAbsent(name, none -> new Part(() -> announced() + draw.get()));
        Sessions.Session session = sessions.of(web);
        return Multi.createFrom()
                .emitter(
                        emitter -> {
                            var listener = new Listener(emitter, session, sse);
                            emitter.onTermination(() -> part.leaves(listener));
                            drawing.execute(() -> begins(part, listener));
                        },
                        BackPressureStrategy.LATEST);
    }

    /** Something was worked out behind the pages that no entry tells of: whoever looks sees it at the next look. */
    public void workedOut() {
        worked.incrementAndGet();
    }

    /** Somebody signs out: pages whose session goes on come straight back. */
    public void signedOut(String person) {
        drawing.execute(() -> parts.values().stream()
                .flatMap(part -> part.listeners().stream())
                .filter(listener -> listener.is(person))
                .forEach(Listener::ended));
    }

    @ActivateRequestContext
    void begins(Part part, Listener listener) {
        part.joins(listener);
        if (!looking) {
            looking = true;
            // A server that stops waits for what is under way, and a stream always is: they end before it waits.
            Runtime.getRuntime().addShutdownHook(leaving);
            var unused = drawing.scheduleWithFixedDelay(this::look, EVERY_S, EVERY_S, TimeUnit.SECONDS);
        }
        trying(() -> listener.hears(part.drawn(seen()), true));
    }

    @ActivateRequestContext
    void look() {
        looks++;
        if (parts.values().stream().anyMatch(part -> !part.listeners().isEmpty())) {
            trying(() -> {
                Seen seen = seen();
                parts.values().forEach(part -> trying(() -> part.tell(seen, looks % BEAT_EVERY == 0)));
            });
        }
    }

    /** What cannot be drawn now is tried again at the next look; nobody else has to wait for it. */
    private static void trying(Runnable telling) {
        try {
            telling.run();
        } catch (RuntimeException failed) {
            LOG.error("a part of a page cannot be drawn", failed);
        }
    }

    /** What every page says stands above each part: work that is stopped is said at once. */
    private String announced() {
        return Pages.announcements(announcements.stream()
                        .flatMap(each -> each.said().stream())
                        .toList())
                .render();
    }

    private Seen seen() {
        return new Seen(ledger.length(), clock.instant().truncatedTo(ChronoUnit.MINUTES), worked.get());
    }

    private void leave() {
        parts.values().stream().flatMap(part -> part.listeners().stream()).forEach(Listener::left);
    }

    @PreDestroy
    void stop() {
        leave();
        drawing.shutdownNow();
        try {
            Runtime.getRuntime().removeShutdownHook(leaving);
        } catch (IllegalStateException endingAnyway) {
            LOG.trace("the hook has run", endingAnyway);
        }
    }
}

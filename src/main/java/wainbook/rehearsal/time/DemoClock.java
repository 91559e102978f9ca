package wainbook.rehearsal.time;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import wainbook.ledger.WorksClock;

/**
 * The time of the demonstration: it begins in the middle of a morning and stands still while the program is off, so that
 * nobody finds the line deserted who comes back after a week. The file holds when the demonstration began and how late it is
 * there now.
 */
@ApplicationScoped
public class DemoClock {

    private static final Logger LOG = Logger.getLogger("wainbook");
    private static final int EVERY_SECONDS = 10;

    private final WorksClock works;
    private final Clock clock;
    private final Path file;
    private final boolean wanted;
    private final ScheduledExecutorService ticking = Executors.newSingleThreadScheduledExecutor(work -> {
        var thread = new Thread(work, "demo-clock");
        thread.setDaemon(true);
        return thread;
    });

    private Optional<Instant> began = Optional.empty();

    DemoClock(
            WorksClock works,
            Clock clock,
            @ConfigProperty(name = "wainbook.data") String data,
            @ConfigProperty(name = "wainbook.rehearsal") boolean rehearsal,
            @ConfigProperty(name = "wainbook.demo") boolean demo) {
        this.works = works;
        this.clock = clock;
        this.file = Path.of(data, "demo-clock");
        this.wanted = rehearsal && demo;
    }

    /** Before anything is written: a demonstration that was begun goes on at the time at which it was left. */
    void wake(@Observes @Priority(100) StartupEvent event) {
        if (wanted) {
            read();
        }
    }

    void sleep(@Observes ShutdownEvent event) {
        ticking.shutdownNow();
        keep();
    }

    /** When the demonstration began, by its own time; empty before that. */
    public Optional<Instant> began() {
        return began;
    }

    /** Sets the time of the works, before its first entries are written. */
    public void set(Instant time) {
        works.showing(time);
    }

    public void begin(Instant time) {
        set(time);
        began = Optional.of(time);
        keep();
        tick();
    }

    /** Stands at a time while the demonstration is played, and is kept there: what happens at this time comes after. */
    public void standing(Instant time) {
        works.standing(time);
        keep();
    }

    private void read() {
        if (!Files.exists(file)) {
            return;
        }
        try {
            List<String> lines = Files.readAllLines(file);
            began = Optional.of(Instant.parse(lines.get(0)));
            set(Instant.parse(lines.get(1)));
            tick();
        } catch (DateTimeParseException | IndexOutOfBoundsException | IOException unreadable) {
            LOG.warnf("%s cannot be read, the demonstration goes on by the time of day: %s", file, unreadable);
        }
    }

    private void tick() {
        var unused = ticking.scheduleAtFixedRate(this::keep, EVERY_SECONDS, EVERY_SECONDS, TimeUnit.SECONDS);
    }

    private synchronized void keep() {
        began.ifPresent(beginning -> {
            try {
                Path next = file.resolveSibling(file.getFileName() + ".next");
                Files.createDirectories(file.toAbsolutePath().getParent());
                Files.writeString(next, beginning + "\n" + clock.instant() + "\n");
                Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
        });
    }
}

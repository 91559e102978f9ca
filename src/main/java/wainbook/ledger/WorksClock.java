package wainbook.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;

/** The server's clock: the one place where the time of day comes in. */
@ApplicationScoped
public class WorksClock {

    private volatile InstantSource shown = WorksClock::ofDay;

    @Produces
    @ApplicationScoped
    Clock clock() {
        return wholeMicroseconds(() -> shown.instant());
    }

    private static Instant ofDay() {
        return Instant.now();
    }

    /** For a demonstration, whose time stands still while the program is off: from now on it is as late as this. */
    public void showing(Instant time) {
        Duration beside = Duration.between(ofDay(), time);
        shown = () -> ofDay().plus(beside);
    }

    /** For a demonstration that is played: it is this time until it is told another. */
    public void standing(Instant time) {
        shown = () -> time;
    }

    /**
     * The databases round to microseconds, and what is hashed must be what is read back. {@link Clock#tick} would do, but
     * its {@code millis()} divides by zero for ticks below a millisecond.
     */
    static Clock wholeMicroseconds(InstantSource finer) {
        InstantSource whole = () -> finer.instant().truncatedTo(ChronoUnit.MICROS);
        return whole.withZone(ZoneOffset.UTC);
    }
}

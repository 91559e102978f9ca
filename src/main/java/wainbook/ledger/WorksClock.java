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

    private volatile Duration beside = Duration.ZERO;

    @Produces
    @ApplicationScoped
    Clock clock() {
        return wholeMicroseconds(() -> Instant.now().plus(beside));
    }

    /** For a demonstration, whose time stands still while the program is off: from now on it is as late as this. */
    public void showing(Instant time) {
        beside = Duration.between(Instant.now(), time);
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

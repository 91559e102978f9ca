package wainbook.ledger;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;
import java.time.Duration;

/** The server's clock: the one place where the time of day comes in. */
class WorksClock {

    /** Whole microseconds: the databases round to them, and what is hashed must be what is read back. */
    @Produces
    @ApplicationScoped
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.ofNanos(1_000));
    }
}

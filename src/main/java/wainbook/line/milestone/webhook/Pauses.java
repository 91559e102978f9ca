package wainbook.line.milestone.webhook;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** How long a delivery waits after each failure: growing, so that a receiver that is down is not pressed. Our choice. */
public final class Pauses {

    private static final List<Duration> PAUSES = List.of(
            Duration.ofMinutes(1),
            Duration.ofMinutes(5),
            Duration.ofMinutes(30),
            Duration.ofHours(2),
            Duration.ofHours(6),
            Duration.ofHours(12),
            Duration.ofHours(24));

    private Pauses() {}

    /** @param tries made so far, 1 or more; empty: it is given up until somebody has it tried again */
    public static Optional<Duration> after(int tries) {
        return tries <= PAUSES.size() ? Optional.of(PAUSES.get(tries - 1)) : Optional.empty();
    }
}

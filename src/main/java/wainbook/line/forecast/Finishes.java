package wainbook.line.forecast;

import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.History;

/** */
public final class Finishes {
    private Finishes() {}

    public static Optional<Instant> of(History h) {
        return BackTest.finished(h);
    }
}

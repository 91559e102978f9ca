package wainbook.line.forecast.score;

import java.time.Instant;
import java.util.Optional;
import wainbook.engineering.flow.history.Basis.Ground;
import wainbook.line.forecast.kept.Prediction;

/**
 * One forecast of one vehicle, and what came of it.
 *
 * @param finished empty as long as its last gate is not signed
 */
public record Outcome(Prediction said, Optional<Instant> finished) {

    private static final double NEARLY_ALL = 0.975;

    /** Nothing that may still come decides whether it was right. */
    boolean decided(Instant now) {
        return !said.quantile(NEARLY_ALL).isAfter(now);
    }

    boolean onPlan() {
        return said.ground().filter(Ground.PLANNED::equals).isPresent();
    }

    /** Whether it finished between these two of what was said; not, if it is not finished and the later one has passed. */
    boolean within(double low, double high) {
        return finished.filter(at -> !at.isBefore(said.quantile(low)) && !at.isAfter(said.quantile(high)))
                .isPresent();
    }
}

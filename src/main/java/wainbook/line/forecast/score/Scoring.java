package wainbook.line.forecast.score;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.forecast.kept.KeptForecasts;
import wainbook.line.forecast.kept.Outcomes;
import wainbook.line.forecast.kept.Prediction;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Holds what was forecast against what came. */
@ApplicationScoped
public class Scoring {

    private static final Duration FRESH = Duration.ofMinutes(10);

    private record Known(long length, Instant at, Cards cards) {
        boolean isFresh(Instant now) {
            return Duration.between(at, now).abs().compareTo(FRESH) < 0;
        }
    }

    private Optional<Known> known = Optional.empty();
    private final Ledger ledger;
    private final KeptForecasts kept;
    private final WorksDay day;

    Scoring(Ledger ledger, KeptForecasts kept, WorksDay day) {
        this.ledger = ledger;
        this.kept = kept;
        this.day = day;
    }

    /** Of those that were really kept; counted anew when another was, and every few minutes, since vehicles finish. */
    public synchronized Cards kept(Instant now) {
        long length = kept.length();
        if (known.filter(one -> one.length() == length && one.isFresh(now)).isEmpty()) {
            known = Optional.of(new Known(length, now, of(kept.lately(), now)));
        }
        return known.orElseThrow().cards();
    }

    /** Of any. Minutes are those of the shifts at the stations of the line. */
    public Cards of(List<Prediction> said, Instant now) {
        Shifts shifts = day.shifts();
        return Cards.of(said, finished(said), shifts, date -> Outcomes.worked(shifts, date), now);
    }

    private Map<String, Instant> finished(List<Prediction> said) {
        Map<String, Instant> finished = new HashMap<>();
        ledger.drawing(() -> {
            said.stream()
                    .map(Prediction::order)
                    .distinct()
                    .forEach(order -> Outcomes.finished(ledger.history(Subject.workOrder(order)))
                            .ifPresent(at -> finished.put(order, at)));
            return finished;
        });
        return finished;
    }
}

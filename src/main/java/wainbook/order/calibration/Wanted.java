package wainbook.order.calibration;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.calibration.CalibrationSaying.CalibrationAsked;

/**
 * The calibration that an order asks for, as it stands.
 *
 * @param asked every time it was said, the last one counts
 */
public record Wanted(List<Said> asked) {

    /** @param number of the entry, which an act that judges it must carry */
    public record Said(CalibrationAsked what, long number, Instant at, String who) {
        static Said of(Entry entry) {
            return new Said(
                    (CalibrationAsked) entry.saying(),
                    entry.number(),
                    entry.moment().at(),
                    entry.moment().who());
        }
    }

    public Wanted {
        asked = List.copyOf(asked);
    }

    public static Wanted of(History history) {
        return history.folded(
                Wanted.class,
                new Wanted(List.of()),
                (wanted, entry) -> entry.saying() instanceof CalibrationAsked ? wanted.and(Said.of(entry)) : wanted);
    }

    private Wanted and(Said said) {
        var more = new ArrayList<>(asked);
        more.add(said);
        return new Wanted(more);
    }

    public Optional<Said> last() {
        return asked.isEmpty() ? Optional.empty() : Optional.of(asked.get(asked.size() - 1));
    }

    public List<Wish> wishes() {
        return last().map(said -> said.what().wishes()).orElse(List.of());
    }

    public Optional<SameTime> sameTime() {
        return last().flatMap(said -> said.what().sameTime());
    }

    /** Number of the last entry about it, 0 for none. */
    public long seen() {
        return last().map(Said::number).orElse(0L);
    }
}

package wainbook.works.instruments;

import java.time.Instant;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentWithdrawn;

/**
 * Whether something was said of an instrument later that puts in doubt what it read at an instant. What is written down from
 * paper afterwards comes too late for the search that a withdrawal sets off, so it is asked here.
 */
public final class DoubtedSince {

    private DoubtedSince() {}

    public static Optional<Reason> against(History instrument, Instant readAt) {
        return instrument.entries().stream()
                .filter(entry -> entry.moment().at().isAfter(readAt))
                .map(Entry::saying)
                .filter(DoubtedSince::doubts)
                .findFirst()
                .map(said -> Reason.of(
                                "works.instrumentDoubtedSince",
                                Reason.WORKS_RULE,
                                instrument.subject().code())
                        .liftedAt("/instruments/" + instrument.subject().code()));
    }

    private static boolean doubts(Saying said) {
        return said instanceof InstrumentWithdrawn || (said instanceof Calibrated found && !foundWithin(found));
    }

    /** Without points on the certificate nothing is known to be wrong. */
    private static boolean foundWithin(Calibrated found) {
        return found.permittedPercent()
                .map(permitted -> found.asFound().stream()
                        .allMatch(point -> point.errorPercent()
                                        .abs()
                                        .add(point.expandedPercent())
                                        .compareTo(permitted)
                                <= 0))
                .orElse(true);
    }
}

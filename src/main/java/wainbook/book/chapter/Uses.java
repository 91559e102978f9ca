package wainbook.book.chapter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.isolation.IsolationSaying.AtPoint;
import wainbook.isolation.IsolationSaying.LivePermitIssued;
import wainbook.isolation.IsolationSaying.Proving;
import wainbook.isolation.IsolationSaying.SanctionIssued;
import wainbook.isolation.IsolationSaying.TesterProvedAfter;
import wainbook.isolation.IsolationSaying.TesterProvedBefore;
import wainbook.isolation.IsolationSaying.Used;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.station.StationSaying.Result;

/** Which instruments a vehicle's entries were made with. */
final class Uses {

    /**
     * One use.
     *
     * @param due the last day of its calibration as the entry kept it; absent where the entry kept none
     */
    record Use(String instrument, Optional<LocalDate> due, Optional<Instant> validUntil, Entry entry) {}

    private Uses() {}

    static List<Use> of(History history) {
        return history.entries().stream().flatMap(Uses::in).toList();
    }

    private static Stream<Use> in(Entry entry) {
        Saying said = entry.saying();
        if (said instanceof Result result) {
            return result
                    .basis()
                    .used()
                    .map(used -> new Use(used.instrument(), Optional.of(used.due()), Optional.empty(), entry))
                    .stream();
        }
        if (said instanceof TesterProvedBefore before) {
            return proving(before.proving(), entry);
        }
        if (said instanceof TesterProvedAfter after) {
            return proving(after.proving(), entry);
        }
        if (said instanceof SanctionIssued sanction) {
            return Stream.of(use(sanction.instrument(), entry));
        }
        if (said instanceof LivePermitIssued live) {
            return Stream.of(use(live.gloves(), entry));
        }
        return said instanceof AtPoint point
                ? Stream.of(new Use(point.tester(), Optional.empty(), Optional.empty(), entry))
                : Stream.empty();
    }

    private static Stream<Use> proving(Proving proving, Entry entry) {
        return Stream.of(use(proving.tester(), entry), use(proving.source(), entry));
    }

    private static Use use(Used used, Entry entry) {
        return new Use(used.code(), Optional.empty(), Optional.of(used.validUntil()), entry);
    }
}

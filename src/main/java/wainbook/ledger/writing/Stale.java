package wainbook.ledger.writing;

import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.History;
import wainbook.ledger.Kinds;
import wainbook.ledger.Reading;
import wainbook.ledger.Subject;

/** Whether the asker of an act that judges a whole had seen all of it. */
public final class Stale {

    private Stale() {}

    public static Optional<Reason> since(Asked asked, Reading reading) {
        Subject subject = asked.writes().get(0);
        History history = reading.of(subject);
        return asked.seen().filter(seen -> seen != history.number()).map(seen -> {
            String changed = history.entries().stream()
                    .filter(entry -> entry.number() > seen)
                    .map(entry -> Kinds.name(entry.saying().getClass()).replaceAll(".*\\.|/.*", "") + " by "
                            + entry.moment().who())
                    .distinct()
                    .collect(Collectors.joining(", "));
            return Reason.of("ledger.changedSince", Reason.WORKS_RULE, subject.code(), changed);
        });
    }
}

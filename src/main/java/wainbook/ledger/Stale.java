package wainbook.ledger;

import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Reason;

/** Whether the asker of an act that judges a whole had seen all of it. */
final class Stale {

    private Stale() {}

    static Optional<Reason> since(Asked asked, Reading reading) {
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

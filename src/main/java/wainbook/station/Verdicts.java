package wainbook.station;

import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.page.Refusal;
import wainbook.page.Words;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.WaitBegun;

/** What an entry came to, said where the eyes are. */
final class Verdicts {

    private Verdicts() {}

    static Optional<StationView.Said> of(Entry entry, ItemState now) {
        if (entry.saying() instanceof Observed observed) {
            String why = observed.notCountedFor().stream()
                    .distinct()
                    .map(Refusal::bare)
                    .collect(Collectors.joining(" "));
            return Optional.of(new StationView.Said(false, true, Words.of("station.saidObserved", why)));
        }
        if (entry.saying() instanceof WaitBegun begun) {
            return Optional.of(new StationView.Said(true, false, Words.of("station.saidWaiting", begun.minutes())));
        }
        if (!(entry.saying() instanceof Result result)) {
            return Optional.empty();
        }
        if (result.verdict() == Verdict.PASS) {
            return Optional.of(new StationView.Said(
                    true, false, Words.of("station.saidPass", now.item().title())));
        }
        String next = now.status() == ItemState.Status.NONCONFORMING
                ? Words.of("station.saidNonconforming")
                : Words.of(
                        "station.saidTryAgain", now.failures() + 1, now.item().tries());
        return Optional.of(
                new StationView.Said(false, false, Words.of("station.saidFail", OutsideLimits.of(result), next)));
    }
}

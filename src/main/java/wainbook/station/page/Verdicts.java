package wainbook.station.page;

import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.page.Refusal;
import wainbook.page.Words;
import wainbook.station.ItemState;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.joint.BoltReading;

/** What an entry came to, said where the eyes are. */
final class Verdicts {

    private Verdicts() {}

    private static String passed(Result result, String title) {
        return result instanceof Determined said
                ? Words.of("station.saidDetermined", title, DeterminedInWords.figures(said))
                : Words.of("station.saidPass", title);
    }

    static Optional<StationView.Said> of(Entry entry, ItemState now) {
        if (entry.saying() instanceof Observed observed) {
            String why = observed.notCountedFor().stream()
                    .distinct()
                    .map(Refusal::bare)
                    .collect(Collectors.joining(" "));
            return Optional.of(new StationView.Said(false, true, false, Words.of("station.saidObserved", why)));
        }
        if (entry.saying() instanceof WaitBegun begun) {
            return Optional.of(
                    new StationView.Said(true, false, false, Words.of("station.saidWaiting", begun.minutes())));
        }
        if (!(entry.saying() instanceof Result result)) {
            return Optional.empty();
        }
        if (result.verdict() == Verdict.PASS) {
            return Optional.of(new StationView.Said(
                    true, false, false, passed(result, now.item().title())));
        }
        String next = now.status() == ItemState.Status.NONCONFORMING
                ? Words.of("station.saidNonconforming")
                : Words.of(
                        "station.saidTryAgain",
                        Math.min(now.failures() + 1, now.item().tries()),
                        now.item().tries());
        boolean undecided = (result instanceof Tightened joint && BoltReading.undecided(joint))
                || (result instanceof Determined said && said.finding() == Finding.UNDECIDED);
        return Optional.of(new StationView.Said(
                false,
                false,
                undecided,
                Words.of(
                        undecided
                                ? "station.saidUndecided"
                                : result instanceof Rechecked ? "station.saidRecheckFails" : "station.saidFail",
                        OutsideLimits.of(result),
                        next)));
    }
}

package wainbook.isolation.proof;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.AtPoint;
import wainbook.isolation.IsolationSaying.DangerReported;
import wainbook.isolation.IsolationSaying.PointMeasured;
import wainbook.isolation.IsolationSaying.PointMeasuredAgain;
import wainbook.isolation.IsolationSaying.RestorationChecked;
import wainbook.isolation.IsolationSaying.TesterProvedAfter;
import wainbook.isolation.State;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** What an entry came to, read off how it left the isolation: nothing is judged a second time. */
public enum Verdict {
    PASSED,
    FAILED,
    DANGER,
    VOIDED;

    /** The verdict of every entry of a vehicle that has one, by the entry’s id. */
    public static Map<UUID, Verdict> of(History vehicle) {
        var verdicts = new LinkedHashMap<UUID, Verdict>();
        var isolation = Isolation.none();
        for (Entry entry : vehicle.entries()) {
            if (entry.saying() instanceof IsolationSaying said) {
                var after = isolation.and(said, entry.moment());
                of(said, isolation.at(entry.moment().at()), after)
                        .ifPresent(verdict -> verdicts.put(entry.id(), verdict));
                isolation = after;
            }
        }
        return verdicts;
    }

    static Optional<Verdict> of(IsolationSaying said, Isolation before, Isolation after) {
        if (before.state() != State.VOID && after.state() == State.VOID) {
            return Optional.of(VOIDED);
        }
        return dangerous(said, after)
                ? Optional.of(DANGER)
                : passed(said, after).map(yes -> yes ? PASSED : FAILED);
    }

    public boolean passes() {
        return this == PASSED;
    }

    /** Danger stands out also where no isolation was open that it could void. */
    private static boolean dangerous(IsolationSaying said, Isolation after) {
        return said instanceof DangerReported
                || (said instanceof AtPoint at
                        && at.readings().stream()
                                .anyMatch(reading -> after.limits().dangerous(reading.pair(), reading.volt())));
    }

    private static Optional<Boolean> passed(IsolationSaying said, Isolation after) {
        if (said instanceof PointMeasured first) {
            return Optional.of(read(after, first.point()).isPresent());
        } else if (said instanceof PointMeasuredAgain again) {
            return Optional.of(
                    read(after, again.point()).flatMap(Proof.PointRead::againAt).isPresent());
        } else if (said instanceof TesterProvedAfter) {
            return Optional.of(after.proof().flatMap(Proof::testerProvedAgainAt).isPresent());
        }
        return said instanceof RestorationChecked check ? Optional.of(check.passed()) : Optional.empty();
    }

    private static Optional<Proof.PointRead> read(Isolation after, String point) {
        return after.proof().flatMap(proof -> proof.point(point));
    }
}

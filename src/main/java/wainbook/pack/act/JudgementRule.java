package wainbook.pack.act;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.Quarantine;
import wainbook.pack.watch.WatchTimes;
import wainbook.works.Person;

/** Whether a pack in quarantine may be judged: sound only once its watch is over, and not after too many missed readings. */
final class JudgementRule {

    private JudgementRule() {}

    static List<Reason> against(History history, Judgement judgement, Person person, Instant now, LocalDate today) {
        var against = new ArrayList<Reason>();
        String serial = history.subject().code();
        Optional<Quarantine> quarantine =
                Pack.of(history).flatMap(Pack::quarantine).filter(Quarantine::stands);
        Qualified.FOR_LIVE_WORK.against(person, today).ifPresent(against::add);
        if (quarantine.isEmpty()) {
            against.add(
                    Reason.of("pack.notInQuarantine", Reason.WORKS_RULE, serial).liftedAt("/packs/" + serial));
        }
        if (judgement == Judgement.SOUND) {
            quarantine.map(Quarantine::times).ifPresent(times -> against.addAll(watched(serial, times, now)));
        }
        return against;
    }

    /** A judgement says what it rests on. */
    static Optional<Reason> words(String words) {
        return words.isBlank() || words.length() > TypedRule.LONGEST_WORDS
                ? Optional.of(Reason.of("pack.judgementWordsMissing", Reason.WORKS_RULE, TypedRule.LONGEST_WORDS)
                        .liftedAt("#words"))
                : Optional.empty();
    }

    private static List<Reason> watched(String serial, WatchTimes times, Instant now) {
        String watch = "/packs/" + serial + "#watch";
        if (!times.complete()) {
            return List.of(Reason.of("pack.watchNotOver", Reason.PRACTICE, serial, times.over())
                    .liftedAt(watch));
        }
        int missed = times.missed(now).size();
        return missed > WatchTimes.MOST_MISSED
                ? List.of(Reason.of("pack.watchGaps", Reason.WORKS_RULE, serial, missed, WatchTimes.MOST_MISSED)
                        .liftedAt("/packs/damaged?serial=" + serial))
                : List.of();
    }
}

package wainbook.gate;

import java.util.Optional;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.isolation.paper.OnPaperSaying.PaperInUse;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.matter.MatterSaying;
import wainbook.order.OrderSaying;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;

/** Whether somebody took part in the work that a gate judges: production, corrections, locks, proofs, permits, dispositions. */
final class OwnWork {

    private OwnWork() {}

    /** How many entries of the stage are the person's own. */
    static long count(History history, StageRecord record, String who) {
        long from = history.entries().stream()
                .filter(entry -> entered(entry.saying()).equals(Optional.of(record.stage())))
                .mapToLong(Entry::number)
                .findFirst()
                .orElse(0);
        return history.entries().stream()
                .filter(entry -> entry.number() > from)
                .filter(entry -> entry.moment().who().equals(who) || onPaper(entry.saying(), who))
                .filter(entry -> isWork(entry.saying(), record))
                .count();
    }

    /** What was written on paper is the work of whoever did it, typed it in, or compared it. */
    private static boolean onPaper(Saying saying, String who) {
        return saying instanceof TakenFromPaper paper
                ? paper.by(who)
                : saying instanceof OnPaper isolation && isolation.by(who);
    }

    private static boolean isWork(Saying saying, StageRecord record) {
        if (saying instanceof Result result) {
            return !inspection(result.about(), record);
        }
        if (saying instanceof TakenFromPaper paper) {
            return !inspection(paper.about(), record);
        }
        return saying instanceof StationSaying
                || saying instanceof MatterSaying.Disposed
                || (saying.getClass().getPackageName().startsWith("wainbook.isolation")
                        && !(saying instanceof PaperInUse));
    }

    private static boolean inspection(About about, StageRecord record) {
        return record.item(about.item())
                .flatMap(state -> state.item().competence())
                .filter(GateRules.COMPETENCE::equals)
                .isPresent();
    }

    private static Optional<String> entered(Saying saying) {
        if (saying instanceof OrderSaying.Moved moved) {
            return moved.to().stage();
        }
        return saying instanceof OrderSaying.DonorReceived received
                ? received.at().stage()
                : Optional.empty();
    }
}

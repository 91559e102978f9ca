package wainbook.gate;

import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.matter.MatterSaying;
import wainbook.order.OrderSaying;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Result;

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
                .filter(entry -> entry.moment().who().equals(who))
                .filter(entry -> isWork(entry.saying(), record))
                .count();
    }

    private static boolean isWork(Saying saying, StageRecord record) {
        if (saying instanceof Result result) {
            return record.item(result.about().item())
                    .flatMap(state -> state.item().competence())
                    .filter(GateRules.COMPETENCE::equals)
                    .isEmpty();
        }
        return saying instanceof StationSaying
                || saying instanceof MatterSaying.Disposed
                || saying.getClass().getPackageName().startsWith("wainbook.isolation");
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

package wainbook.works.instruments;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.works.AfterWithdrawal;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.calibration.PointVerdict;

/**
 * Tells of an instrument that an act has put in doubt, again when the act is asked for again: what broke off is then made good.
 */
@ApplicationScoped
public class InDoubt {

    private final Ledger ledger;
    private final List<AfterWithdrawal> afterWithdrawal;

    InDoubt(Ledger ledger, @All List<AfterWithdrawal> afterWithdrawal) {
        this.ledger = ledger;
        this.afterWithdrawal = afterWithdrawal;
    }

    /** Whether an entry puts in doubt what was measured before it. */
    public static boolean by(Entry entry) {
        return (entry.saying() instanceof InstrumentWithdrawn said && said.cause() != WithdrawalCause.OTHER)
                || (entry.saying() instanceof Calibrated calibrated && PointVerdict.putsInDoubt(calibrated));
    }

    public Outcome<Entry> told(Outcome<Entry> outcome, Actor actor) {
        return outcome.map(entry -> {
            cause(entry)
                    .forEach(found -> afterWithdrawal.forEach(
                            after -> after.inDoubt(entry.subject().code(), found, actor)));
            return entry;
        });
    }

    /** The entry of the act, or the withdrawal that it wrote in the same breath; the one with figures goes first. */
    private List<Entry> cause(Entry entry) {
        return ledger.history(entry.subject()).entries().stream()
                .filter(one -> one.number() == entry.number() || one.number() == entry.number() + 1)
                .filter(one -> one.moment().at().equals(entry.moment().at()) && by(one))
                .limit(1)
                .toList();
    }
}

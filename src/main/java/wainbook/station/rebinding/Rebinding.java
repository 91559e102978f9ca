package wainbook.station.rebinding;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Rebound;
import wainbook.order.WorkOrder;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.sheet.Changes;
import wainbook.station.StageRecord;
import wainbook.station.work.Workplace;

/**
 * Lets a vehicle's present stage go on by the revision of its sheet that is in force now. Entries are kept only for items
 * that the newer revision left as they were; all others are open again.
 */
@ApplicationScoped
public class Rebinding {

    /**
     * What is asked.
     *
     * @param toRevision the one whose changes the asker looked at
     */
    public record ToRebind(UUID id, String order, int toRevision, Optional<Long> seen) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Rebound.class;
        }
    }

    private final Ledger ledger;
    private final Workplace workplace;
    private final Releases releases;

    Rebinding(Ledger ledger, Workplace workplace, Releases releases) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.releases = releases;
    }

    public Outcome<Entry> rebind(ToRebind asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> newer(reading.of(order))
                        .fold(
                                newer -> newer.to().revision() == asked.toRevision()
                                        ? Decision.say(order, new Rebound(newer.from(), newer.to(), newer.keptKeys()))
                                        : Decision.refuse(Reason.of(
                                                "station.otherRevision",
                                                Reason.WORKS_RULE,
                                                newer.to().sheet(),
                                                newer.to().revision(),
                                                asked.toRevision())),
                                Decision::refuse));
    }

    /** What rebinding would keep and open; or why there is nothing to go on to. Asked before a page is drawn. */
    public Outcome<NewerSheet> newer(History history) {
        Optional<WorkOrder> order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return Outcome.refused(Reason.of(
                    "order.notFound", Reason.WORKS_RULE, history.subject().code()));
        }
        Optional<Binding> bound = order.get().binding();
        if (bound.isEmpty()) {
            return Outcome.refused(Reason.of(
                    "station.noSheetToRebind", Reason.WORKS_RULE, order.get().number()));
        }
        Binding from = bound.get();
        Released inForce = releases.sheetInForce(from.sheet()).orElseThrow();
        if (inForce.revision() <= from.revision()) {
            return Outcome.refused(Reason.of(
                    "station.newestSheet", Reason.WORKS_RULE, order.get().number(), from.sheet(), from.revision()));
        }
        var changes = Changes.between(
                releases.sheet(from.sheet(), from.revision()),
                inForce.sheet(),
                Changes.joints(releases.jointsAt(boundAt(history, from)), releases.joints()));
        StageRecord record =
                workplace.record(history, order.get(), from.stage()).orElseThrow();
        return Outcome.done(NewerSheet.of(record, inForce, changes));
    }

    private static Instant boundAt(History history, Binding binding) {
        return history.entries().stream()
                .filter(entry -> binds(entry.saying()).equals(Optional.of(binding)))
                .findFirst()
                .orElseThrow()
                .moment()
                .at();
    }

    private static Optional<Binding> binds(Saying saying) {
        if (saying instanceof DonorReceived received) {
            return Optional.of(received.binding());
        }
        if (saying instanceof Moved moved) {
            return moved.binding();
        }
        return saying instanceof Rebound rebound ? Optional.of(rebound.to()) : Optional.empty();
    }
}

package wainbook.station.entry;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
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
import wainbook.order.WorkOrder;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;

/** Says of an entry that it does not count. It stays on the record; the item is open again and needs a new entry. */
@ApplicationScoped
public class Voiding {

    /** What is asked: which entry, and why. */
    public record ToVoid(UUID id, String order, UUID entry, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Voided.class;
        }
    }

    private final Ledger ledger;

    Voiding(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> voidEntry(ToVoid asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(order);
            List<Reason> against = against(history, asked);
            return against.isEmpty()
                    ? Decision.say(order, new Voided(asked.entry(), line(history, asked.entry()), asked.reason()))
                    : Decision.refuse(against);
        });
    }

    static List<Reason> against(History history, ToVoid asked) {
        Optional<Entry> entry = history.entry(asked.entry());
        var against = new ArrayList<Reason>();
        if (entry.isEmpty()) {
            against.add(Reason.of("station.entryNotFound", Reason.WORKS_RULE, asked.order()));
        } else if (!(entry.get().saying() instanceof Result) && !(entry.get().saying() instanceof WaitBegun)) {
            against.add(Reason.of("station.cannotBeVoided", Reason.WORKS_RULE));
        } else if (history.saying(Voided.class)
                .anyMatch(said -> ((Voided) said.saying()).entry().equals(asked.entry()))) {
            against.add(Reason.of("station.voidedAlready", Reason.WORKS_RULE));
        }
        if (asked.reason().isBlank()) {
            against.add(Reason.of("station.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        if (WorkOrder.of(history)
                .filter(known -> known.phase() == WorkOrder.Phase.HANDED_OVER)
                .isPresent()) {
            against.add(Reason.of("station.handedOver", Reason.WORKS_RULE, asked.order()));
        }
        return against;
    }

    private static String line(History history, UUID id) {
        Saying saying = history.entry(id).orElseThrow().saying();
        return saying instanceof Result result
                ? result.about().line()
                : ((WaitBegun) saying).about().line();
    }
}

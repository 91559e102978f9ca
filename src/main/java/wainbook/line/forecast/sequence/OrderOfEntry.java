package wainbook.line.forecast.sequence;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.EntryOrderSet;
import wainbook.line.forecast.state.SetOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;

/** Sets the order in which vehicles come onto the line, or takes it back. The forecast goes by it; no move is barred. */
@ApplicationScoped
public class OrderOfEntry {

    private static final String PAGE = "/forecast/sequence";

    /**
     * An order to be set.
     *
     * @param replaces the entry of the one it replaces, in the stream of the works; 0 if none was ever set
     * @param orders empty to take back what is set
     */
    public record ToSet(UUID id, long replaces, List<String> orders) implements Asked {
        public ToSet {
            orders = List.copyOf(orders);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.works());
        }

        @Override
        public Class<? extends Saying> says() {
            return EntryOrderSet.class;
        }
    }

    private final Ledger ledger;

    OrderOfEntry(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The last that was set or taken back. */
    public Optional<SetOrder> last() {
        return last(SetOrder.all(ledger.history(Subject.works())));
    }

    private static Optional<SetOrder> last(List<SetOrder> all) {
        return all.stream().reduce((former, latter) -> latter);
    }

    public Outcome<Entry> set(ToSet asked, Actor actor) {
        Set<String> waiting = Stream.of(Phase.ORDERED, Phase.DONOR_RECEIVED, Phase.DONOR_ACCEPTED)
                .flatMap(phase -> WorkOrderRow.inPhase(phase).stream())
                .map(row -> row.number)
                .collect(Collectors.toSet());
        return ledger.write(asked, actor, reading -> {
            List<Reason> against = against(asked, last(SetOrder.all(reading.of(Subject.works()))), waiting);
            return against.isEmpty()
                    ? Decision.say(Subject.works(), new EntryOrderSet(asked.orders()))
                    : Decision.refuse(against);
        });
    }

    static List<Reason> against(ToSet asked, Optional<SetOrder> last, Set<String> waiting) {
        var against = new ArrayList<Reason>();
        if (last.map(SetOrder::entry).orElse(0L) != asked.replaces()) {
            against.add(reason("line.entryOrderSeen"));
        }
        if (asked.orders().isEmpty()
                && last.map(SetOrder::orders).orElse(List.of()).isEmpty()) {
            against.add(reason("line.entryOrderNone"));
        }
        var named = new HashSet<String>();
        for (String order : asked.orders()) {
            if (!waiting.contains(order)) {
                against.add(reason("line.entryOrderNotWaiting", order));
            } else if (!named.add(order)) {
                against.add(reason("line.entryOrderTwice", order));
            }
        }
        return against;
    }

    private static Reason reason(String key, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt(PAGE);
    }
}

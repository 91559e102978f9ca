package wainbook.order.promise;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
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
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.Ordering;
import wainbook.order.WorkOrder;
import wainbook.order.promise.PromiseSaying.OptionPromised;
import wainbook.order.promise.PromiseSaying.PromiseWithdrawn;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.sheet.CheckItem;

/** Puts on record what the operator was promised, and what is no longer promised. */
@ApplicationScoped
public class Promising {

    /** What is asked; see {@link OptionPromised}. */
    public record ToPromise(
            UUID id, String order, String option, List<String> items, List<String> documents, boolean beforeHandover)
            implements Asked {
        public ToPromise {
            option = option.strip();
            items = List.copyOf(items);
            documents = List.copyOf(documents);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return OptionPromised.class;
        }
    }

    /** What is asked to withdraw. */
    public record ToWithdraw(UUID id, String order, int promise, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return PromiseWithdrawn.class;
        }
    }

    private static final int LONGEST = 200;
    private static final String DOCUMENT = "[A-Z]{2}-[0-9]{2}";

    private final Ledger ledger;
    private final Releases releases;

    Promising(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    public Outcome<Entry> promise(ToPromise asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            List<Reason> against = against(history, asked);
            return against.isEmpty()
                    ? Decision.say(
                            history.subject(),
                            new OptionPromised(
                                    1
                                            + (int) history.saying(OptionPromised.class)
                                                    .count(),
                                    asked.option(),
                                    asked.items(),
                                    asked.documents(),
                                    asked.beforeHandover()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> withdraw(ToWithdraw asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(Subject.workOrder(asked.order()));
            var against = new ArrayList<Reason>(Ordering.closed(WorkOrder.of(history)));
            if (Promise.of(history).stream().noneMatch(one -> one.number() == asked.promise() && one.stands())) {
                against.add(Reason.of("order.promiseNotFound", Reason.WORKS_RULE, asked.promise()));
            }
            if (asked.reason().isBlank()) {
                against.add(Reason.of("order.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            history.subject(),
                            new PromiseWithdrawn(asked.promise(), asked.reason().strip()))
                    : Decision.refuse(against);
        });
    }

    private List<Reason> against(History history, ToPromise asked) {
        var order = WorkOrder.of(history);
        if (order.isEmpty()) {
            return List.of(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        var against = new ArrayList<Reason>(Ordering.closed(order));
        if (asked.option().isEmpty() || asked.option().length() > LONGEST) {
            against.add(
                    Reason.of("order.optionMissing", Reason.WORKS_RULE, LONGEST).liftedAt("#option"));
        }
        if (asked.items().isEmpty() && asked.documents().isEmpty()) {
            against.add(Reason.of("order.evidenceMissing", Reason.WORKS_RULE).liftedAt("#items"));
        }
        Set<String> known = items(order.get());
        asked.items().stream()
                .filter(item -> !known.contains(item))
                .forEach(item -> against.add(
                        Reason.of("order.itemUnknown", Reason.WORKS_RULE, item).liftedAt("#items")));
        asked.documents().stream()
                .filter(id -> !id.matches(DOCUMENT))
                .forEach(id -> against.add(Reason.of("order.documentUnknown", Reason.WORKS_RULE, id)
                        .liftedAt("#documents")));
        return against;
    }

    /** Keys of all items that vehicles of the order's route are checked by. */
    private Set<String> items(WorkOrder order) {
        return releases.route(order.ordered().route()).stream()
                .flatMap(route -> Stream.concat(
                        Stream.of(route.intakeSheet()), route.legs().stream().map(Route.Leg::checkSheet)))
                .flatMap(sheet -> releases.sheetInForce(sheet).stream())
                .map(Released::sheet)
                .flatMap(sheet -> sheet.items().stream())
                .map(CheckItem::key)
                .collect(Collectors.toSet());
    }
}

package wainbook.station;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.Mentioned;
import wainbook.isolation.step.FactsNow;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.permit.Permits;
import wainbook.process.CheckItem;
import wainbook.process.Condition;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;

/** What a vehicle's electrical state says to work on an item, and which source the work brings aboard. */
@ApplicationScoped
class Electrical {

    private final FactsNow factsNow;
    private final Releases releases;

    Electrical(FactsNow factsNow, Releases releases) {
        this.factsNow = factsNow;
        this.releases = releases;
    }

    List<Reason> against(CheckItem item, History history, Moment moment) {
        List<String> landing = landing(item, history);
        List<Reason> fitting =
                landing.isEmpty() ? List.of() : Permits.of(history).againstFittingPacks();
        return item.condition() == Condition.NONE
                ? fitting
                : Stream.concat(power(item, history, moment, landing), fitting.stream())
                        .toList();
    }

    private Stream<Reason> power(CheckItem item, History history, Moment moment, List<String> landing) {
        Isolation now = Isolation.of(history);
        var facts = factsNow.of(history, moment, Mentioned.people(moment.who()));
        Stream<Reason> closed = landing.stream()
                .filter(source -> item.condition() == Condition.DEAD && !now.isOpen(source))
                .map(source -> Reason.of("station.sourceStillClosed", Reason.PRACTICE, source));
        String desk = "/isolation/" + history.subject().code();
        return Stream.concat(now.permitsWork(item.condition(), moment.who(), moment.at(), facts).stream(), closed)
                .map(reason -> reason.liftedAt(desk));
    }

    /** Sources of the vehicle's plan that fitting this item's parts brings aboard for the first time. */
    List<String> landing(CheckItem item, History history) {
        if (item.parts().isEmpty()) {
            return List.of();
        }
        List<String> aboard = Isolation.of(history).aboard();
        return WorkOrder.of(history)
                .flatMap(order -> releases.plan(order.ordered().variant()))
                .stream()
                .flatMap(plan -> landing(item, plan))
                .filter(source -> !aboard.contains(source))
                .toList();
    }

    private static Stream<String> landing(CheckItem item, Plan plan) {
        return item.parts().stream().map(CheckItem.PartUse::part).filter(plan::foresees);
    }
}

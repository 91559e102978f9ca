package wainbook.order.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.returning.FormerRecords;
import wainbook.page.Words;

/** A hold that was put on under a former order holds the vehicle as it would have there. It is released there. */
@ApplicationScoped
class FormerHolds implements HoldsByRule {

    private final FormerRecords former;

    FormerHolds(FormerRecords former) {
        this.former = former;
    }

    @Override
    public Set<Stops> canStop() {
        return EnumSet.allOf(Stops.class);
    }

    @Override
    public List<HoldByRule> on(WorkOrder order) {
        return former.of(order).stream().flatMap(FormerHolds::in).toList();
    }

    private static Stream<HoldByRule> in(History history) {
        String order = history.subject().code();
        List<Held> standing = WorkOrder.of(history).map(WorkOrder::holds).orElse(List.of());
        return history.saying(Held.class)
                .filter(entry -> standing.contains(entry.saying()))
                .map(entry -> {
                    Held held = (Held) entry.saying();
                    return new HoldByRule(
                            Words.of("order.formerHold", held.hold(), order, HoldChoices.word(held.kindOfHold())),
                            held.reason(),
                            Set.copyOf(held.stops()),
                            entry.moment().at(),
                            Holding.mayRelease(held.kindOfHold()),
                            "/orders/" + order + "#holds",
                            Optional.of(order));
                });
    }
}

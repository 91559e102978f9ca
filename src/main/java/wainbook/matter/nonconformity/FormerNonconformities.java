package wainbook.matter.nonconformity;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.order.hold.HoldByRule;
import wainbook.order.hold.HoldsByRule;
import wainbook.order.returning.FormerRecords;
import wainbook.page.Words;
import wainbook.works.Role;

/** What was reported under a former order and is not decided yet bars the gates of the new one, as its own would. */
@ApplicationScoped
class FormerNonconformities implements HoldsByRule {

    private final FormerRecords former;

    FormerNonconformities(FormerRecords former) {
        this.former = former;
    }

    @Override
    public Set<Stops> canStop() {
        return Set.of(Stops.SIGN);
    }

    @Override
    public List<HoldByRule> on(WorkOrder order) {
        return former.of(order).stream()
                .flatMap(history -> Nonconformities.of(history).awaitingDisposition().stream()
                        .map(open -> hold(history.subject().code(), open)))
                .toList();
    }

    private static HoldByRule hold(String order, Nonconformity open) {
        return new HoldByRule(
                Words.of("matter.formerNonconformity", open.number(), order),
                open.opened().what(),
                Set.of(Stops.SIGN),
                open.since(),
                Set.of(Role.QUALITY_ENGINEER),
                "/orders/" + order + "#matters",
                Optional.of(order));
    }
}
